//! A drill that is about to begin: what to expect, who does it, and the start.

use bench::Mode;
use drill::Order;
use web_sys::HtmlInputElement;
use words::Voice;
use yew::prelude::*;

use crate::exam::Expect;
use crate::route::Route;
use crate::said::use_voice;
use crate::store::use_work;
use crate::taking::use_taking;

/// The drill.
#[derive(Properties, PartialEq)]
pub struct Props {
    /// What was asked for.
    pub order: Order,
    /// Told when the learner goes back.
    pub onback: Callback<()>,
}

/// The sheet before the start.
#[component]
pub fn Ready(props: &Props) -> Html {
    let voice = use_voice();
    let work = use_work();
    let learner = use_state(String::new);
    let under_way = work.session().is_some_and(|session| session.ended.is_none());
    let oninput = {
        let learner = learner.setter();
        Callback::from(move |event: InputEvent| {
            learner.set(event.target_unchecked_into::<HtmlInputElement>().value());
        })
    };
    let taking = use_taking(Callback::from(|()| Route::Drill.open()));
    let onsubmit = {
        let (taking, order, learner) = (taking.clone(), props.order.clone(), learner.clone());
        Callback::from(move |event: SubmitEvent| {
            event.prevent_default();
            taking.take(&order, &drill::attempt::clean_name(&learner));
        })
    };
    let back = props.onback.reform(|_: MouseEvent| ());
    html! {
        <section class="card narrow ready" data-door="ready">
            <h1>{ voice.mode(props.order.mode) }</h1>
            { terms(&voice, &props.order) }
            <form {onsubmit}>
                <label class="field">
                    <span>{ voice.text("page-learner") }</span>
                    <input value={(*learner).clone()} {oninput} maxlength={drill::attempt::LONGEST_NAME.to_string()} autocomplete="off" data-field="learner" required={props.order.mode == Mode::Exam} />
                </label>
                <p class="note">{ voice.text("page-learner-note") }</p>
                if under_way {
                    <p class="warn">{ voice.text("page-gives-up") }</p>
                }
                { taking.problem() }
                { taking.or(html! {
                    <div class="row">
                        <button type="submit" class="go" data-act="start">
                            { voice.text(if under_way { "page-start-anyway" } else { "page-start" }) }
                        </button>
                        <button type="button" onclick={back} data-act="back">{ voice.text("page-back") }</button>
                    </div>
                }) }
            </form>
        </section>
    }
}

/// What the learner may know beforehand. Never the fault, never a trap.
fn terms(voice: &Voice, order: &Order) -> Html {
    if order.mode == Mode::Exam {
        return html! { <Expect order={order.clone()} /> };
    }
    let about = if order.mode == Mode::Coached { "page-mode-coached-note" } else { "page-mode-solo-note" };
    html! {
        <>
            <p>{ voice.text(about) }</p>
            <dl class="terms">
                <dt>{ voice.text("page-licence") }</dt>
                <dd>{ voice.licence(order.licence) }</dd>
                if let Some(minutes) = order.limit_minutes {
                    <dt>{ voice.text("page-term-limit") }</dt>
                    <dd>{ voice.filled("page-minutes", &[("minutes", minutes.into())]) }</dd>
                }
                if let Some(minutes) = order.clock_minutes {
                    <dt>{ voice.text("page-term-clock") }</dt>
                    <dd>{ voice.filled("page-minutes", &[("minutes", minutes.into())]) }</dd>
                }
            </dl>
        </>
    }
}
