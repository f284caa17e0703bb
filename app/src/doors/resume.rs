//! The drill that is under way on this device, or the one that has just ended.

use yew::prelude::*;

use crate::route::Route;
use crate::said::use_voice;
use crate::store::use_work;
use crate::{text, units};

/// A strip above the doors; nothing when there is no drill.
#[component]
pub fn Resume() -> Html {
    let voice = use_voice();
    let work = use_work();
    if work.opening {
        // As large as what comes in its place.
        return html! {
            <section class="card resume">
                <p role="status">{ text::OPENING }</p>
                <span class="button" aria-hidden="true">{ "…" }</span>
            </section>
        };
    }
    let Some(session) = work.session() else { return html! {} };
    let ended = session.ended.is_some();
    let (to, label) =
        if ended { (Route::Debrief, "page-resume-debrief") } else { (Route::Drill, "page-resume") };
    let said = voice.filled(
        if ended { "page-resume-ended" } else { "page-resume-under-way" },
        &[
            ("mode", voice.mode(session.job.mode).into()),
            ("clock", units::clock(session.job.starts_at + session.clock).into()),
            ("steps", (session.log.len() as u32).into()),
        ],
    );
    html! {
        <section class="card resume" data-door="resume">
            <p>{ said }</p>
            <a class="button go" href={to.href()} data-act="resume">{ voice.text(label) }</a>
        </section>
    }
}
