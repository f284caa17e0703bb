//! The job as a strip along the bottom: dragged, tapped or moved by the arrow keys it moves every drawing above it.

use std::rc::Rc;

use quantity::Seconds;
use web_sys::HtmlInputElement;
use yew::prelude::*;

use super::drawing::{clock, use_width};
use super::phase::phase_name;
use super::scale::Axis;
use super::sheet::Sheet;
use super::svg::{px, sheet as box_of, word};
use crate::said::use_voice;

/// Height of the strip.
const HEIGHT: f64 = 34.0;
/// Half the width of the hand that is dragged; the style sheet has the whole.
const HAND: f64 = 10.0;
/// Width of a letter of its labels, about.
pub const LETTER: f64 = 6.4;

/// The job and the moment that is looked at.
#[derive(Properties, PartialEq)]
pub struct Props {
    /// The job.
    pub sheet: Rc<Sheet>,
    /// The chosen sample.
    pub at: usize,
    /// The page shows it: on a phone, with one section only.
    pub shown: bool,
    /// Told another one.
    pub onat: Callback<usize>,
}

/// The strip.
#[component]
pub fn Strip(props: &Props) -> Html {
    let voice = use_voice();
    let frame = use_node_ref();
    let measured = use_width(&frame);
    let width = measured.unwrap_or_default();
    let Props { sheet, at, onat, shown } = props;
    let sheet = sheet.clone();
    let Some(sample) = sheet.picture.samples.get(*at).cloned() else { return html! {} };
    let axis = Axis { left: HAND, right: width - HAND, length: sheet.length(), starts_at: sheet.starts_at };
    let said = voice.filled(
        "debrief-go-to",
        &[("clock", clock(&sheet, sample.at).into()), ("act", sheet.what(&voice, sample.step).into())],
    );
    let oninput = {
        let (sheet, onat) = (sheet.clone(), onat.clone());
        Callback::from(move |event: InputEvent| {
            let value = event.target_unchecked_into::<HtmlInputElement>().value_as_number();
            onat.emit(sheet.picture.shown(Seconds(value)));
        })
    };
    let onkeydown = {
        let (sheet, onat, at, step) = (sheet.clone(), onat.clone(), *at, sample.step);
        Callback::from(move |event: KeyboardEvent| {
            let last = sheet.picture.samples.len().saturating_sub(1);
            let to = match event.key().as_str() {
                "ArrowRight" | "ArrowUp" => (at + 1).min(last),
                "ArrowLeft" | "ArrowDown" => at.saturating_sub(1),
                "PageUp" => sheet.picture.after(step + 1),
                "PageDown" => sheet.picture.after(step.saturating_sub(1)),
                "Home" => 0,
                "End" => last,
                _ => return,
            };
            event.prevent_default();
            onat.emit(to);
        })
    };
    html! {
        <section class={classes!("strip", (!shown).then_some("elsewhere"))} aria-label={voice.text("debrief-strip")}>
            <p aria-hidden="true"><b class="letter">{ sheet.letter(sample.step) }</b>{ " " }{ &said }</p>
            <div ref={frame}>
                <svg viewBox={format!("0 0 {width:.0} {HEIGHT}")} height={HEIGHT.to_string()} aria-hidden="true">
                    if measured.is_some() {
                        <Stretches sheet={sheet.clone()} {axis} step={sample.step} />
                    }
                </svg>
                <input
                    type="range"
                    min="0"
                    max={format!("{:.0}", sheet.length().get().ceil())}
                    step="1"
                    value={format!("{:.0}", sample.at.get())}
                    aria-label={voice.text("debrief-strip")}
                    aria-valuetext={said.clone()}
                    {oninput}
                    {onkeydown}
                />
            </div>
        </section>
    }
}

#[derive(Properties, PartialEq)]
struct StretchesProps {
    sheet: Rc<Sheet>,
    axis: Axis,
    step: u32,
}

/// How the time was spent. A stretch's name is drawn where it has room; every moment of the accounts is a notch.
#[component]
fn Stretches(props: &StretchesProps) -> Html {
    let voice = use_voice();
    let StretchesProps { sheet, axis, step } = props;
    let stretches = sheet.stretches.iter().map(|one| {
        let (x, end) = (axis.x(one.from), axis.x(one.to));
        let wide = (end - x - 1.0).max(0.8);
        let name = voice.text(&format!("debrief-phase-{}", phase_name(one.phase)));
        let fits = name.chars().count() as f64 * LETTER + 10.0 < wide;
        let here = (one.steps.0..=one.steps.1).contains(step);
        html! {
            <g class={classes!("stretch", phase_name(one.phase), here.then_some("here"))}>
                { box_of("", [x, 7.0, wide, HEIGHT - 8.0]) }
                if fits {
                    { word("ax", x + 6.0, 25.0, name) }
                }
            </g>
        }
    });
    let notches = sheet.steps.iter().filter(|step| step.marked).map(|step| {
        html! { <path class={classes!("notch", step.grave.then_some("grave"))} d={format!("M{} 0v6", px(axis.x(step.at)))} /> }
    });
    html! { <>{ for stretches }{ for notches }</> }
}
