//! The door for who is here for the first time: ordinary coached drills with a guide beside them.

use yew::prelude::*;

use crate::drill::guide::Guided;
use crate::route::Route;
use crate::said::use_voice;
use crate::store::use_work;
use crate::taking::use_taking;

/// The door. What is under way is not given up for it: then there is no such door.
#[component]
pub fn First() -> Html {
    let voice = use_voice();
    let work = use_work();
    let taking = use_taking(Callback::from(|()| Route::Drill.open()));
    if work.opening || work.session().is_some_and(|session| session.ended.is_none()) {
        return html! {};
    }
    let begin = |call: Guided| {
        let taking = taking.clone();
        let onclick = Callback::from(move |_: MouseEvent| taking.take(&call.order(), ""));
        let (class, name) = match call {
            Guided::First => (Some("go"), "page-first"),
            Guided::Second => (None, "page-second"),
        };
        html! {
            <button type="button" {class} data-act={call.name()} {onclick}>
                { voice.text(name) }
            </button>
        }
    };
    html! {
        <section class="card door first" data-door="first">
            <h2>{ voice.text("page-door-first") }</h2>
            <p>{ voice.text("page-door-first-about") }</p>
            { taking.problem() }
            { taking.or(html! { <div class="acts">{ for Guided::ALL.map(begin) }</div> }) }
        </section>
    }
}
