//! The last outcome: seen as a strip, heard once by a screen reader.

use bench::{Entry, Shown};
use plant::Layout;
use yew::prelude::*;

use super::passing::Passing;
use crate::store::use_work;
use crate::text;
use crate::units::{self, Units};

/// The strip. The region itself stays; only its text is exchanged, so each outcome is announced once.
#[component]
pub fn Live() -> Html {
    let work = use_work();
    let Some(running) = &work.running else { return html! {} };
    let fresh = running.session.log.len() > running.restored;
    let last = running.session.log.last().filter(|_| fresh);
    let tone = last.map_or("", |entry| tone(entry));
    let starts = running.session.job.starts_at;
    let clock = units::clock(starts + running.session.clock);
    html! {
        <div class={classes!("live", tone)}>
            if let Some(ongoing) = &work.ongoing {
                <Passing ongoing={ongoing.clone()} {starts} />
            } else {
                <time aria-hidden="true">{ clock }</time>
            }
            <p role="status" aria-live="polite" aria-atomic="true">
                if work.ongoing.is_some() {
                    { text::WAITING }
                } else if let Some(entry) = last {
                    <span key={running.session.log.len()}>{ sentence(entry, work.desk.units, running.session.home.plant.wiring.layout) }</span>
                }
            </p>
        </div>
    }
}

/// How grave the last outcome is.
pub fn tone(entry: &Entry) -> &'static str {
    match (&entry.outcome.shown, entry.outcome.harms.is_empty()) {
        (_, false) => "harm",
        (Shown::Stopped { .. }, _) => "stopped",
        (Shown::Refused { .. }, _) => "refused",
        _ => "",
    }
}

/// An entry in one breath: what was done, what it showed, what was noticed, what it hurt.
pub fn sentence(entry: &Entry, units: Units, layout: Layout) -> String {
    let act = text::fit(text::act(entry, units), layout);
    let parts = [act, text::shown(entry, units, layout), text::aftermath(entry, units)];
    parts.into_iter().filter(|part| !part.is_empty()).fold(String::new(), text::follow)
}
