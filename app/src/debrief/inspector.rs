//! One act looked at: what it showed, what the accounts say of it, what it would have shown otherwise.

use std::rc::Rc;

use words::Voice;
use yew::prelude::*;

use super::accounts::points;
use super::drawing::clock;
use super::sheet::{Sheet, Step};
use super::would::Would;
use crate::said::use_voice;

/// The job and the chosen step.
#[derive(Properties, PartialEq)]
pub struct Props {
    /// The job.
    pub sheet: Rc<Sheet>,
    /// The step.
    pub step: u32,
    /// Told another step.
    pub onstep: Callback<u32>,
    /// Told from which step the job shall be worked again; absent where it is somebody else's.
    #[prop_or_default]
    pub onfrom: Option<Callback<u32>>,
}

/// The inspector.
#[component]
pub fn Inspector(props: &Props) -> Html {
    let voice = use_voice();
    let sheet = &props.sheet;
    let Some(step) = sheet.step(props.step) else {
        let said = voice.text(if sheet.steps.is_empty() { "debrief-no-acts" } else { "debrief-arrival" });
        return html! { <p class="note">{ said }</p> };
    };
    let last = sheet.steps.len() as u32;
    html! {
        <section class="inspector" aria-label={voice.text("debrief-inspector")}>
            <div class="stepper">
                { go(props, step.number > 1, step.number.saturating_sub(1), "‹", voice.text("debrief-before")) }
                <h2 aria-live="polite">{ &step.letter }{ " · " }{ clock(sheet, step.at) }</h2>
                <small>{ voice.filled("debrief-step-of", &[("step", step.number.into()), ("last", last.into())]) }</small>
                { go(props, step.number < last, step.number + 1, "›", voice.text("debrief-after")) }
            </div>
            // All of it anew at another step: nothing is seen to jump.
            <div class="inspected" key={step.number}>
                <div class="reading-card">
                    <p>{ &step.what }</p>
                    if !step.reading.is_empty() {
                        <p class="reading">{ &step.reading }</p>
                    }
                    { for step.showed.iter().map(|one| html! { <p>{ one }</p> }) }
                    { for step.harms.iter().map(|one| html! { <p class="harm">{ one }</p> }) }
                    { judged(props, &voice, step) }
                    if !step.told.is_empty() {
                        <p class="muted">{ &step.told }</p>
                    }
                </div>
                { from_here(props, &voice, step) }
                <Would sheet={sheet.clone()} step={props.step} />
            </div>
        </section>
    }
}

/// A button that goes on from this act, where the job is the learner's own.
fn from_here(props: &Props, voice: &Voice, step: &Step) -> Html {
    let Some(told) = props.onfrom.clone() else { return html! {} };
    let number = step.number;
    let onclick = Callback::from(move |_| told.emit(number));
    html! {
        <p class="from-here">
            <button type="button" data-act="again-from" {onclick}>{ voice.text("debrief-from-here") }</button>
            <small>{ voice.text("debrief-from-here-about") }</small>
        </p>
    }
}

fn judged(props: &Props, voice: &Voice, step: &Step) -> Html {
    let lines: Vec<_> = props.sheet.lines_of(step.number).collect();
    if lines.is_empty() {
        return html! { <p class="muted">{ voice.text("debrief-not-charged") }</p> };
    }
    lines
        .into_iter()
        .map(|line| {
            html! {
                <div class="judged">
                    <p>
                        if line.weighs() { <b class="cost">{ points(line.points) }</b>{ " " } }
                        { &line.text }
                    </p>
                    <p class="muted">{ &line.why }{ " " }{ &line.right }</p>
                </div>
            }
        })
        .collect()
}

fn go(props: &Props, there: bool, to: u32, sign: &'static str, label: String) -> Html {
    let told = props.onstep.clone();
    let onclick = Callback::from(move |_| {
        if there {
            told.emit(to);
        }
    });
    html! {
        <button type="button" class="step-button" aria-label={label} aria-disabled={(!there).to_string()} {onclick}>
            { sign }
        </button>
    }
}
