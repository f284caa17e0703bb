//! The wall clock of a drill that has a limit by it. The page appends what it saw; a file cannot prove it.

use bench::Action;
use gloo::timers::callback::Interval;
use yew::prelude::*;

use crate::compose::read_drill;
use crate::said::use_voice;
use crate::store::{Head, Msg, use_work};

/// How often the clock is looked at.
const TICK_MS: u32 = 1_000;
/// From this many minutes left it is said, so that a screen reader's user is not taken unawares.
const WARN_MINUTES: f64 = 5.0;

/// The time left; nothing when the drill has no such limit.
#[component]
pub fn ExamClock() -> Html {
    let voice = use_voice();
    let work = use_work();
    let now = use_state(js_sys::Date::now);
    let head = work.running.as_ref().map(|running| running.head.clone());
    let allowed = use_memo(head.clone(), |head| head.as_ref().and_then(allowed));
    let over = work.session().is_none_or(|session| session.ended.is_some());
    let ticking = allowed.is_some() && !over;
    {
        let now = now.setter();
        use_effect_with(ticking, move |ticking| {
            let timer = ticking.then(|| Interval::new(TICK_MS, move || now.set(js_sys::Date::now())));
            move || drop(timer)
        });
    }
    let left = allowed
        .zip(head.as_ref().and_then(began))
        .map(|(minutes, began)| minutes - (*now - began) / 60_000.0);
    let out = ticking && left.is_some_and(|left| left <= 0.0);
    {
        let (work, allowed) = (work.clone(), *allowed);
        use_effect_with(out, move |out| {
            if let Some(allowed) = allowed.filter(|_| *out) {
                work.dispatch(Msg::Do(vec![Action::TimeUp { allowed }]));
            }
        });
    }
    let Some(left) = left.filter(|_| ticking) else { return html! {} };
    let whole = left.max(0.0).ceil() as u32;
    let said = voice.filled("page-clock-left", &[("minutes", whole.into())]);
    html! {
        <div class={classes!("exam-clock", (left < WARN_MINUTES).then_some("short"))} data-hook="exam-clock">
            <span aria-hidden="true">{ &said }</span>
            <span class="unseen" role="status">
                if left < WARN_MINUTES { { said.clone() } }
            </span>
        </div>
    }
}

/// Minutes allowed, of a drill that has such a limit.
fn allowed(head: &Head) -> Option<f64> {
    read_drill(&head.drill).ok().and_then(|order| order.clock_minutes).map(f64::from)
}

/// When the drill began by the device's clock; the journal names each attempt by it.
fn began(head: &Head) -> Option<f64> {
    quantity::decimal::read(&head.attempt)
}
