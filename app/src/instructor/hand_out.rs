//! Choosing a drill and handing it out.

use bench::Mode;
use yew::prelude::*;

use super::handout::Handout;
use crate::compose::{Field, OrderFields, fresh_seed, modes, use_order_form};
use crate::said::use_voice;

/// The form beside the sheet it makes.
#[component]
pub fn HandOut() -> Html {
    let voice = use_voice();
    let form = use_order_form(Mode::Solo);
    let another = {
        let form = form.clone();
        Callback::from(move |_| form.dispatch(Field::Seed(fresh_seed())))
    };
    html! {
        <div class="desk-grid">
            <section class="card" data-door="compose">
                <h1>{ voice.text("instructor-hand-out") }</h1>
                { modes(&voice, &form, &Mode::ALL) }
                <OrderFields form={form.clone()} limits=true />
                <p class="note">{ voice.text("instructor-longer") }</p>
                <div class="row">
                    <button type="button" onclick={another} data-act="another">{ voice.text("instructor-another") }</button>
                    <span class="quiet-note">{ voice.filled("instructor-seed", &[("seed", form.seed.to_string().into())]) }</span>
                </div>
            </section>
            { match form.order() {
                Ok(order) => html! { <Handout {order} /> },
                Err(error) => html! {
                    <section class="card"><p class="warn" role="alert">{ error.to_string() }</p></section>
                },
            } }
        </div>
    }
}
