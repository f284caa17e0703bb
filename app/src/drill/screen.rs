//! The screen of a drill: three columns, or one section at a time on a phone.

use gloo::timers::callback::Timeout;
use plant::Place;
use wasm_bindgen::JsCast;
use yew::prelude::*;

use super::call::Call;
use super::focus::use_kept_focus;
use super::guide::{GuideCard, Guided};
use super::head::Head;
use super::kit::Kit;
use super::known::Known;
use super::meter::Meter;
use super::no_job::NoJob;
use super::notes::{FindingForm, Log, PocketCard, Suspects};
use super::over::Over;
use super::place::{PlacePanel, Places};
use super::rehearsal::Rehearsal;
use super::sheet::Sheet;
use super::sound::Sounds;
use super::tabs::Tabs;
use crate::shell::{Footer, Live, use_later};
use crate::store::{Rest, Tab, use_work};
use crate::text;

/// How the page stands to the drill.
#[derive(Properties, PartialEq)]
pub struct Props {
    /// Another page comes next turn: what stands beside the bench is cleared away already.
    pub parting: bool,
}

/// A drill under way, or words when there is none.
#[component]
pub fn Drill(props: &Props) -> Html {
    let work = use_work();
    use_top_of_section(work.desk.tab, work.desk.at);
    let known = use_memo(work.session().cloned(), |session| {
        session.as_ref().map(|one| Known::of(one)).unwrap_or_default()
    });
    let (later, known_later) = use_later((work.session().cloned(), known.clone()));
    use_kept_focus([work.session(), later.as_ref()].map(|session| session.map_or(0, |one| one.log.len())));
    let Some(running) = &work.running else { return html! { <NoJob /> } };
    let session = running.session.clone();
    text::during(&session);
    // What stands beside the bench follows a turn later.
    let beside = later.unwrap_or_else(|| session.clone());
    let tab = match work.desk.tab {
        Tab::Call => "show-call",
        Tab::Heater => "show-heater",
        Tab::Meter => "show-meter",
        Tab::Kit => "show-kit",
        Tab::Log => "show-log",
    };
    let at = if work.desk.at.is_some() { "at-place" } else { "at-sheet" };
    html! {
        <div class={classes!("drill", tab, at)}>
            <a class="skip" href="#main">{ text::SKIP }</a>
            <Head drill={running.drill.clone()} session={session.clone()} />
            if let Some(call) = Guided::of(&running.drill.order) {
                <GuideCard {call} session={session.clone()} known={known.clone()} />
            }
            <Over />
            <main id="main" class="columns" tabindex="-1">
                <h1 class="unseen">{ text::THE_JOB }</h1>
                <section class="left" aria-label={text::LEFT}>
                    if !props.parting {
                        <Call session={beside.clone()} known={known_later} />
                        <Log session={beside.clone()} />
                    }
                </section>
                <section class="bench" aria-label={text::BENCH}>
                    <div class="drawing" id="whole-drawing" tabindex="-1">
                        <Sheet session={session.clone()} known={known.clone()} />
                        <Places />
                    </div>
                    <PlacePanel session={session.clone()} known={known.clone()} />
                </section>
                <section class="right" aria-label={text::RIGHT}>
                    if !props.parting {
                        <Meter session={session.clone()} />
                        <Kit session={beside.clone()} />
                        // Their words are in the rest of the book.
                        if work.rest != Rest::Coming {
                            <PocketCard />
                            <Suspects session={beside.clone()} />
                            <FindingForm session={beside} />
                        }
                    }
                </section>
            </main>
            <div class="foot">
                <Live />
                <Sounds />
                <Rehearsal {session} />
                <Footer>
                    if !running.head.drill.starts_with('{') {
                        <span class="code">{ text::drill_code(&running.head.drill) }</span>
                    }
                </Footer>
                <Tabs />
            </div>
        </div>
    }
}

/// A new section or place begins at its top, and a new place takes the focus: what had it may be gone.
#[hook]
fn use_top_of_section(tab: Tab, at: Option<Place>) {
    let before = use_mut_ref(|| (tab, at));
    use_effect_with((tab, at), move |now| {
        let (was, now) = (before.replace(*now), *now);
        // In a turn of its own: both ask for the layout of what was just drawn.
        let focused = focused();
        let turn = (was != now).then(|| {
            Timeout::new(0, move || to_top(was.1 != now.1 && self::focused() == focused, now.1.is_some()))
        });
        move || drop(turn)
    });
}

fn focused() -> Option<web_sys::Element> {
    gloo::utils::document().active_element()
}

/// Whoever moved the focus meanwhile keeps it.
fn to_top(moved: bool, at_place: bool) {
    let found = |id| gloo::utils::document().get_element_by_id(id);
    if let Some(main) = found("main") {
        main.set_scroll_top(0);
    }
    let target = found(if at_place { "at-hand" } else { "whole-drawing" }).filter(|_| moved);
    if let Some(element) = target.and_then(|one| one.dyn_into::<web_sys::HtmlElement>().ok()) {
        // Fails only for an element that is not in the page.
        let _ = element.focus();
    }
}
