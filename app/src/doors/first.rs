//! The door for who is here for the first time: an ordinary coached drill with a guide beside it.

use yew::prelude::*;

use crate::drill::guide::first_call;
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
    let onclick = {
        let taking = taking.clone();
        Callback::from(move |_: MouseEvent| taking.take(&first_call(), ""))
    };
    html! {
        <section class="card door first" data-door="first">
            <h2>{ voice.text("page-door-first") }</h2>
            <p>{ voice.text("page-door-first-about") }</p>
            { taking.problem() }
            { taking.or(html! {
                <button type="button" class="go" data-act="first" {onclick}>{ voice.text("page-first") }</button>
            }) }
        </section>
    }
}
