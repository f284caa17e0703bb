//! What the same act would have shown had another fault been there, so that a reading's worth can be seen.

use std::rc::Rc;

use bench::{Action, Shown};
use diagnosis::{HadItBeen, Instead};
use plant::fault::FaultId;
use words::Voice;
use yew::prelude::*;

use super::sheet::Sheet;
use crate::said::use_voice;
use crate::turns::Turns;

/// The page draws the step before it computes the other worlds, and computes none while a hand runs along the strip.
const AFTER_MS: u32 = 300;

/// The job and the chosen step.
#[derive(Properties, PartialEq)]
pub struct Props {
    /// The job.
    pub sheet: Rc<Sheet>,
    /// The step.
    pub step: u32,
}

/// The table; nothing for acts that read nothing.
#[component]
pub fn Would(props: &Props) -> Html {
    let voice = use_voice();
    let found = use_state(|| None::<(u32, Rc<[Instead]>)>);
    let reads = props.sheet.session.log.get((props.step as usize).wrapping_sub(1)).is_some_and(|entry| {
        tells(&entry.action) && !matches!(entry.outcome.shown, Shown::Refused { .. } | Shown::Stopped { .. })
    });
    {
        let found = found.setter();
        use_effect_with((props.sheet.clone(), props.step, reads), move |(sheet, step, reads)| {
            let (job, step) = (&sheet.session, *step);
            let turns = reads.then(|| {
                let mut asked = HadItBeen::new(&job.job, sheet.fault, sheet.second.as_ref(), &job.log, step);
                Turns::after(AFTER_MS, move |_| {
                    let more = asked.turn();
                    if !more {
                        found.set(Some((step, asked.found().into())));
                    }
                    more
                })
            });
            move || drop(turns)
        });
    }
    if !reads {
        return html! {};
    }
    let ready = found.as_ref().filter(|(step, _)| *step == props.step);
    html! {
        <section class="would">
            <h2>{ voice.text("debrief-had-it-been") }</h2>
            if let Some((_, all)) = ready {
                { table(&voice, all) }
            } else {
                <p class="muted" role="status">{ voice.text("debrief-folding-would") }</p>
            }
        </section>
    }
}

/// Whether an act reads something off the world. The customer's words belong to the true week alone.
const fn tells(action: &Action) -> bool {
    matches!(
        action,
        Action::Look { .. }
            | Action::Listen { .. }
            | Action::Smell { .. }
            | Action::Read { .. }
            | Action::TryStart
            | Action::Meter { .. }
            | Action::Clamp { .. }
            | Action::NonContact { .. }
            | Action::TestFuse { .. }
            | Action::Touch { .. }
            | Action::ReliefLever { .. }
            | Action::Bucket { .. }
            | Action::Thermometer { .. }
            | Action::Plug { .. }
            | Action::PortableHeater { .. }
            | Action::Stops { .. }
            | Action::Sample { .. }
            | Action::LetThemUse { .. }
            | Action::LookAtAnode
            | Action::ReadWaterMeter
            | Action::ReadGauge
            | Action::TankCharge
            | Action::PressReset
    )
}

/// Suspects that would have shown the same stand in one row; those the instruments could not tell come last.
fn table(voice: &Voice, all: &[Instead]) -> Html {
    let (alike, apart): (Vec<&Instead>, Vec<&Instead>) = all.iter().partition(|one| one.alike);
    let mut rows: Vec<(String, Vec<FaultId>)> = Vec::new();
    for one in apart {
        let shown = voice.shown(&one.shown);
        match rows.iter_mut().find(|(text, _)| *text == shown) {
            Some((_, faults)) => faults.push(one.fault),
            None => rows.push((shown, vec![one.fault])),
        }
    }
    let same: Vec<FaultId> = alike.iter().map(|one| one.fault).collect();
    html! {
        <table>
            { for rows.iter().map(|(shown, faults)| html! {
                <tr><td>{ names(voice, faults) }</td><td class="value">{ shown }</td></tr>
            }) }
            if !same.is_empty() {
                <tr class="muted"><td>{ names(voice, &same) }</td><td class="value">{ voice.text("debrief-alike") }</td></tr>
            }
        </table>
    }
}

/// A few names stand open; more of them open on asking.
fn names(voice: &Voice, faults: &[FaultId]) -> Html {
    const OPEN: usize = 3;
    let name = |fault: &FaultId| html! { <span class="suspect">{ voice.fault(*fault) }</span> };
    let first = faults.get(..OPEN.min(faults.len())).unwrap_or_default();
    let more = faults.get(OPEN..).unwrap_or_default();
    html! {
        <>
            { for first.iter().map(name) }
            if !more.is_empty() {
                <details>
                    <summary>{ voice.filled("debrief-more", &[("count", (more.len() as u32).into())]) }</summary>
                    { for more.iter().map(name) }
                </details>
            }
        </>
    }
}
