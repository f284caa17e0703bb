//! The page: the inside large, and beside it the same acts as on the drill's sheet. Only where a coach may show it.

use std::rc::Rc;

use bench::Mode;
use plant::fault::FaultId;
use yew::prelude::*;

use super::inside::Inside;
use super::start::Start;
use crate::drill::kit::Kit;
use crate::drill::known::Known;
use crate::drill::meter::Meter;
use crate::drill::place::{PlacePanel, Places};
use crate::route::{Route, use_address};
use crate::said::use_voice;
use crate::shell::{Footer, Live, Top};
use crate::store::use_work;
use crate::{text, units};

/// The page.
#[component]
pub fn Show() -> Html {
    let voice = use_voice();
    let work = use_work();
    let asked = use_address().rest;
    // Whoever comes from further down another page begins at the top of this one.
    use_effect_with((), |()| gloo::utils::window().scroll_to_with_x_and_y(0.0, 0.0));
    let wanted = FaultId::ALL.iter().copied().find(|id| id.name().eq_ignore_ascii_case(&asked));
    let coached = work.running.as_ref().filter(|one| one.drill.order.mode == Mode::Coached);
    let shown = coached.filter(|one| wanted.is_none_or(|fault| one.drill.fault.id == fault));
    let Some(running) = shown else {
        let body = match wanted {
            _ if work.opening => html! { <p class="lead" role="status">{ text::OPENING }</p> },
            Some(fault) => html! { <Start {fault} /> },
            None => html! {
                <section class="card narrow">
                    <h1>{ voice.text("show-title") }</h1>
                    <p>{ voice.text("show-none") }</p>
                    <div class="row">
                        <a class="button go" href={Route::Doors.href()}>{ voice.text("page-to-doors") }</a>
                        <a class="button" href={Route::Atlas.href()}>{ voice.text("atlas-link") }</a>
                    </div>
                </section>
            },
        };
        return html! {
            <div class="page">
                <Top tag={voice.text("show-tag")} />
                <main class="doors" id="main">{ body }</main>
                <Footer />
            </div>
        };
    };
    let session = running.session.clone();
    text::about(&session.home.plant);
    let known = Rc::new(Known::of(&session));
    let clock = units::clock(session.job.starts_at + session.clock);
    html! {
        <div class="show">
            <Top tag={voice.text("show-tag")}>
                <span class="job">{ text::job_title(&running.drill.title) }</span>
                <span class="clock"><span class="unseen">{ text::CLOCK }</span>{ clock }</span>
                <a class="button" href={Route::Drill.href()} data-act="to-sheet">{ voice.text("show-back") }</a>
            </Top>
            <main id="main" class="show-main" tabindex="-1">
                <h1 class="unseen">{ voice.text("show-title") }</h1>
                <Inside running={running.clone()} />
                <section class="show-acts" aria-label={voice.text("show-acts")}>
                    <Places />
                    <PlacePanel session={session.clone()} known={known} />
                    <Kit session={session.clone()} />
                    <Meter {session} />
                </section>
            </main>
            <Live />
            <Footer />
        </div>
    }
}
