//! The door for who is here for the first time: an ordinary coached drill with a guide beside it.

use yew::prelude::*;

use crate::away::Asked;
use crate::begin;
use crate::compose::name_drill;
use crate::drill::guide::first_call;
use crate::route::Route;
use crate::said::use_voice;
use crate::shell::Busy;
use crate::store::use_work;

/// The door. What is under way is not given up for it: then there is no such door.
#[component]
pub fn First() -> Html {
    let voice = use_voice();
    let work = use_work();
    let asked = use_mut_ref(|| None::<Asked>);
    let dealing = use_state(|| false);
    let problem = use_state(String::new);
    if work.opening || work.session().is_some_and(|session| session.ended.is_none()) {
        return html! {};
    }
    let onclick = {
        let (work, asked) = (work.clone(), asked.clone());
        let (dealing, problem) = (dealing.setter(), problem.setter());
        Callback::from(move |_: MouseEvent| {
            dealing.set(true);
            let (dealing, problem) = (dealing.clone(), problem.clone());
            let told = Callback::from(move |result: Result<(), String>| {
                dealing.set(false);
                match result {
                    Ok(()) => Route::Drill.open(),
                    Err(why) => problem.set(why),
                }
            });
            *asked.borrow_mut() = Some(begin::begin(&work, &name_drill(&first_call()), "", told));
        })
    };
    let onstop = {
        let dealing = dealing.setter();
        Callback::from(move |()| dealing.set(false))
    };
    html! {
        <section class="card door first" data-door="first">
            <h2>{ voice.text("page-door-first") }</h2>
            <p>{ voice.text("page-door-first-about") }</p>
            if !problem.is_empty() {
                <p class="warn" role="alert">{ &*problem }</p>
            }
            if *dealing {
                <Busy said={voice.text("page-dealing")} {onstop} />
            } else {
                <button type="button" class="go" data-act="first" {onclick}>{ voice.text("page-first") }</button>
            }
        </section>
    }
}
