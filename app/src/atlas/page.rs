//! The atlas as a page: the list, or the fault that the address names. Shut while an exam is under way.

use bench::Mode;
use plant::fault::FaultId;
use yew::prelude::*;

use super::entry::Entry;
use super::index::Index;
use crate::route::{Route, use_address};
use crate::said::use_voice;
use crate::shell::{Footer, Top};
use crate::store::use_work;

/// The page.
#[component]
pub fn Atlas() -> Html {
    let voice = use_voice();
    let work = use_work();
    let asked = use_address().rest;
    let fault = FaultId::ALL.iter().copied().find(|id| id.name().eq_ignore_ascii_case(&asked));
    let exam = work
        .running
        .as_ref()
        .is_some_and(|job| job.drill.order.mode == Mode::Exam && job.session.ended.is_none());
    html! {
        <div class="page">
            <Top tag={voice.text("atlas-tag")}>
                if work.running.is_some() {
                    <nav class="halves" aria-label={voice.text("sources-back")}>
                        <a class="half" href={Route::Drill.href()}>{ voice.text("page-resume") }</a>
                    </nav>
                }
            </Top>
            <main class="doors atlas" id="main">
                if exam {
                    <h1>{ voice.text("atlas-title") }</h1>
                    <p class="lead">{ voice.text("atlas-shut") }</p>
                } else if let Some(fault) = fault {
                    <Entry {fault} key={fault.name()} />
                } else {
                    <Index />
                }
            </main>
            <Footer />
        </div>
    }
}
