//! The four accounts with their lines.

use std::rc::Rc;

use words::Voice;
use yew::prelude::*;

use super::drawing::clock;
use super::sheet::{Account, Line, Sheet};
use crate::glossary::Marked;
use crate::said::use_voice;

/// The job.
#[derive(Properties, PartialEq)]
pub struct Props {
    /// The job.
    pub sheet: Rc<Sheet>,
    /// Told a step that a line names.
    pub onstep: Callback<u32>,
}

/// The four, side by side.
#[component]
pub fn Accounts(props: &Props) -> Html {
    let voice = use_voice();
    html! {
        <section class="accounts" aria-label={voice.text("debrief-accounts")}>
            { for props.sheet.accounts.iter().map(|one| account(props, &voice, one)) }
        </section>
    }
}

fn account(props: &Props, voice: &Voice, one: &Account) -> Html {
    let (lost, kept): (Vec<&Line>, Vec<&Line>) = one.lines.iter().partition(|line| line.weighs());
    let nothing = lost.is_empty();
    html! {
        <div class="account" data-account={one.id}>
            <h2>{ &one.name }</h2>
            <p class="points">
                <b>{ points(one.got) }</b>{ " " }
                <small>{ voice.filled("debrief-of", &[("of", points(one.of).into())]) }</small>
            </p>
            if nothing {
                <p class="clean">{ voice.text(&format!("debrief-clean-{}", one.id)) }</p>
            }
            { for lost.into_iter().map(|one| line(props, voice, one)) }
            if !kept.is_empty() {
                <details class="kept">
                    <summary>{ voice.filled("debrief-kept", &[("count", (kept.len() as u32).into())]) }</summary>
                    { for kept.into_iter().map(|one| line(props, voice, one)) }
                </details>
            }
        </div>
    }
}

/// A line: what it cost, which act, what happened; opened, why it matters and what would have been right.
fn line(props: &Props, voice: &Voice, line: &Line) -> Html {
    let step = props.sheet.step(line.step);
    let onclick = {
        let (told, step) = (props.onstep.clone(), line.step);
        Callback::from(move |_| told.emit(step))
    };
    html! {
        <details class={classes!("line", line.gate.then_some("gate"))}>
            <summary>
                if line.weighs() {
                    <b class="cost">{ points(line.points) }</b>{ " " }
                }
                if let Some(step) = step {
                    <b class="letter">{ &step.letter }</b>{ " · " }
                }
                { &line.text }
            </summary>
            if !line.why.is_empty() {
                <p><b>{ voice.text("debrief-why") }</b>{ " " }<Marked text={line.why.clone()} /></p>
            }
            if !line.right.is_empty() {
                <p><b>{ voice.text("debrief-right") }</b>{ " " }<Marked text={line.right.clone()} /></p>
            }
            if let Some(step) = step {
                <button type="button" class="quiet" {onclick}>
                    { voice.filled("debrief-go-to", &[("clock", clock(&props.sheet, step.at).into()), ("act", step.what.clone().into())]) }
                </button>
            }
        </details>
    }
}

/// Points as they are written: whole where they are whole, a real minus sign.
pub fn points(points: f64) -> String {
    // Adding nothing takes the sign off a zero.
    let tenths = (points * 10.0).round() / 10.0 + 0.0;
    let text = if tenths.fract() == 0.0 { format!("{tenths:.0}") } else { format!("{tenths:.1}") };
    text.replace('-', "−")
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn points_are_written_short() {
        assert_eq!([37.0, -2.5, -3.0, -0.0].map(points), ["37", "−2.5", "−3", "0"]);
    }
}
