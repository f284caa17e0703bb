//! Practise alone: coached or solo, everything to chance or chosen.

use bench::Mode;
use drill::Order;
use yew::prelude::*;

use crate::compose::{OrderFields, modes, use_order_form};
use crate::said::{use_speech, use_voice};
use crate::shell::coming;
use crate::store::Rest;

/// What follows.
#[derive(Properties, PartialEq)]
pub struct Props {
    /// Told the drill that was asked for.
    pub onorder: Callback<Order>,
}

/// The door.
#[component]
pub fn Practise(props: &Props) -> Html {
    let voice = use_voice();
    let rest = use_speech().rest;
    let form = use_order_form(Mode::Coached);
    let problem = use_state(String::new);
    let onclick = {
        let (form, told, problem) = (form.clone(), props.onorder.clone(), problem.setter());
        Callback::from(move |_| match form.order() {
            Ok(order) => told.emit(order),
            Err(error) => problem.set(crate::text::order_error(&error)),
        })
    };
    html! {
        <section class="card door practise" data-door="practise">
            <h2>{ voice.text("page-door-practise") }</h2>
            <p>{ voice.text("page-door-practise-about") }</p>
            { modes(&voice, &form, &[Mode::Coached, Mode::Solo]) }
            <details class="choose">
                <summary>{ voice.text("page-choose") }</summary>
                // What is chosen from is told in the rest of the book.
                if rest == Rest::Here {
                    <OrderFields form={form.clone()} />
                } else {
                    { coming(rest == Rest::Failed) }
                }
            </details>
            if !problem.is_empty() {
                <p class="warn" role="alert">{ &*problem }</p>
            }
            <button type="button" class="go" data-act="practise" {onclick}>
                { voice.text("page-practise") }
            </button>
        </section>
    }
}
