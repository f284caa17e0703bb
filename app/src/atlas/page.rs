//! The atlas as a page: the list, or the fault that the address names. Shut while an exam is under way.

use bench::Mode;
use plant::fault::FaultId;
use yew::prelude::*;

use super::entry::Entry;
use super::index::Index;
use crate::route::use_address;
use crate::said::use_voice;
use crate::shell::Reference;
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
        <Reference tag={voice.text("atlas-tag")} class="atlas">
            if exam {
                <h1>{ voice.text("atlas-title") }</h1>
                <p class="lead">{ voice.text("atlas-shut") }</p>
            } else if let Some(fault) = fault {
                <Entry {fault} key={fault.name()} />
            } else {
                <Index />
            }
        </Reference>
    }
}
