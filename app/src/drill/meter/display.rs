//! The meter's display: the last reading, as long as nothing was moved since.

use bench::{Action, Display as Shows, Entry, Shown};
use yew::prelude::*;

use super::case::used_meter;
use super::settle::{settling, use_steps};
use crate::store::{Desk, World, use_work};
use crate::text;

/// The world.
#[derive(Properties, PartialEq)]
pub struct Props {
    /// The world.
    pub session: World,
}

/// The display. Silent for screen readers: the reading is announced once, as the outcome of its act.
#[component]
pub fn Display(props: &Props) -> Html {
    let work = use_work();
    let last = props.session.log.iter().rposition(|entry| used_meter(&entry.action));
    let steps = use_steps(last.map_or(0, |at| at + 1));
    let current = last.and_then(|at| props.session.log.get(at)).filter(|entry| is_current(entry, &work.desk));
    let (number, unit) = current
        .and_then(|entry| shows(&settling(&entry.outcome.shown, steps)))
        .unwrap_or_else(|| ("- - -".into(), String::new()));
    let what = current.map(|entry| text::act(entry, work.desk.units)).unwrap_or_default();
    html! {
        <div class="lcd" data-lcd={format!("{number} {unit}")}>
            if props.session.me.low_battery() {
                <svg class="lcd-battery" viewBox="0 0 26 14" role="img" aria-label={text::LOW_BATTERY}>
                    <path d="M2 2h19v10H2ZM21 5h3v4h-3" />
                    <path d="M5 5v4" />
                </svg>
            }
            <span class="lcd-what">{ what }</span>
            <span class={classes!("lcd-number", current.is_none().then_some("idle"))}>{ number }<small>{ unit }</small></span>
        </div>
    }
}

/// Whether a reading was taken as the meter now stands.
fn is_current(entry: &Entry, desk: &Desk) -> bool {
    matches!(entry.action, Action::ProveMeter { .. }) || desk.reading().as_ref() == Some(&entry.action)
}

/// A reading in number and unit.
fn shows(shown: &Shown) -> Option<(String, String)> {
    Some(match shown {
        Shown::Meter { display } => match *display {
            Shows::Blank => (String::new(), String::new()),
            Shows::Tone { on: true } => (text::TONE.to_string(), String::new()),
            Shows::Tone { on: false } => (text::NO_TONE.to_string(), String::new()),
            Shows::Live { volts } => (format!("{:.0}", volts.get()), text::LIVE_VOLTS.to_string()),
            _ => match display.figures() {
                Some(figures) => (figures.number, figures.unit.to_string()),
                None => (text::OVER.to_string(), String::new()),
            },
        },
        Shown::Clamp { amps } => (format!("{:.1}", amps.get()), "A".to_owned()),
        _ => return None,
    })
}
