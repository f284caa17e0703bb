//! The debrief's page: the job on this device, once it has ended and may be looked at.

use std::rc::Rc;

use bench::Mode;
use drill::Attempt;
use gloo::utils::window;
use words::Voice;
use yew::prelude::*;

use super::hand_in::HandIn;
use super::read::use_sheet;
use super::view::SheetView;
use crate::begin;
use crate::compose::{fresh_seed, read_drill};
use crate::drill::guide::Guided;
use crate::exam::Locked;
use crate::route::Route;
use crate::said::use_voice;
use crate::shell::{Footer, Top};
use crate::store::{Running, WorkHandle, World, use_work};
use crate::taking::{Taking, use_taking};
use crate::turns::Turns;

/// The page.
#[component]
pub fn Debrief() -> Html {
    let voice = use_voice();
    let work = use_work();
    let opened = use_state(|| false);
    let attempt = use_memo(work.running.clone(), |running| running.as_ref().and_then(attempt_of));
    let ended = work.session().is_some_and(|session| session.ended.is_some());
    let onopen = {
        let opened = opened.setter();
        Callback::from(move |()| opened.set(true))
    };
    let attempt = (*attempt).clone().filter(|_| ended);
    let body = match attempt.clone() {
        None if work.opening => html! { <p class="lead" role="status">{ crate::text::OPENING }</p> },
        None => empty(&voice, work.running.is_some()),
        Some(attempt) if attempt.order.mode == Mode::Exam && !*opened => {
            html! { <Locked {attempt} {onopen} /> }
        }
        Some(attempt) => html! { <Judged {attempt} ended={work.session().cloned()} /> },
    };
    let shown = attempt.is_some_and(|attempt| attempt.order.mode != Mode::Exam || *opened);
    html! {
        <div class={classes!("page", shown.then_some("debrief-page"))}>
            <Top tag={voice.text("debrief-title")}>
                if shown { <Buttons /> }
            </Top>
            <main class={if shown { "debrief-main" } else { "doors" }} id="main">{ body }</main>
            <Footer />
        </div>
    }
}

/// The attempt as it would be handed in.
fn attempt_of(running: &Running) -> Option<Rc<Attempt>> {
    let order = read_drill(&running.head.drill).ok()?;
    let mut attempt = Attempt::new(&running.head.learner, order);
    attempt.practice = running.head.practice;
    attempt.actions = running.session.log.iter().map(|entry| entry.action.clone()).collect();
    Some(Rc::new(attempt))
}

/// Nothing to look at yet: no job, or one that has not ended.
fn empty(voice: &Voice, under_way: bool) -> Html {
    let (id, to, label) = if under_way {
        ("debrief-not-ended", Route::Drill, "page-resume")
    } else {
        ("debrief-nothing", Route::Doors, "page-to-doors")
    };
    html! {
        <section class="card narrow">
            <h1>{ voice.text("debrief-title") }</h1>
            <p>{ voice.text(id) }</p>
            <a class="button" href={to.href()}>{ voice.text(label) }</a>
        </section>
    }
}

#[derive(Properties, PartialEq)]
struct JudgedProps {
    /// What was done.
    attempt: Rc<Attempt>,
    /// How it ended.
    ended: Option<World>,
}

/// The debrief, as soon as it is computed.
#[component]
fn Judged(props: &JudgedProps) -> Html {
    let voice = use_voice();
    let work = use_work();
    let folding = use_mut_ref(|| None::<Turns>);
    // An exam is worked through once.
    let onfrom = (props.attempt.order.mode != Mode::Exam).then(|| {
        Callback::from(move |step| {
            let told = Callback::from(|()| Route::Drill.open());
            *folding.borrow_mut() = begin::again_from(&work, step, told);
        })
    });
    use_sheet(props.attempt.clone(), props.ended.clone()).show(&voice, |sheet| {
        html! {
            <>
                <h1 class="unseen">{ voice.text("debrief-title") }</h1>
                <SheetView {sheet} onfrom={onfrom.clone()}>
                    <HandIn attempt={props.attempt.clone()} />
                </SheetView>
            </>
        }
    })
}

/// Work it again, print, next.
#[component]
fn Buttons() -> Html {
    let voice = use_voice();
    let work = use_work();
    let taking = use_taking(Callback::from(|()| Route::Drill.open()));
    let again = restart(&work, &taking, |order| order);
    let next = restart(&work, &taking, |order| match Guided::after(&order) {
        Some(call) => call.order(),
        None => drill::Order { seed: fresh_seed(), ..order },
    });
    let guided = work.running.as_ref().and_then(|running| Guided::after(&running.drill.order));
    let go_on = if guided.is_some() { "page-second" } else { "debrief-next" };
    let print = Callback::from(|_: MouseEvent| drop(window().print()));
    taking.or(html! {
        <div class="top-buttons">
            <button type="button" onclick={again} data-act="again">{ voice.text("debrief-again") }</button>
            <button type="button" onclick={print} data-act="print">{ voice.text("debrief-print") }</button>
            <button type="button" class="go" onclick={next} data-act="next">{ voice.text(go_on) }</button>
        </div>
    })
}

/// Begins the same drill, changed, for the same learner.
fn restart(
    work: &WorkHandle,
    taking: &Taking,
    change: fn(drill::Order) -> drill::Order,
) -> Callback<MouseEvent> {
    let (work, taking) = (work.clone(), taking.clone());
    Callback::from(move |_| {
        let Some(head) = work.running.as_ref().map(|running| running.head.clone()) else { return };
        let Ok(order) = read_drill(&head.drill) else { return };
        taking.take(&change(order), &head.learner);
    })
}
