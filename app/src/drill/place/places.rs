//! The places as a row of buttons: the same as on the drawing, for whoever likes a list better.

use plant::Place;
use yew::prelude::*;

use super::go;
use crate::store::use_work;
use crate::text;

/// The row.
#[component]
pub fn Places() -> Html {
    let work = use_work();
    let button = |place: &Place| {
        let place = *place;
        let here = work.desk.at == Some(place);
        let onclick = {
            let work = work.clone();
            Callback::from(move |_| go(&work, place))
        };
        html! {
            <button
                type="button"
                data-go={place.name()}
                aria-current={here.then_some("location")}
                {onclick}
            >
                { text::place(place) }
            </button>
        }
    };
    html! {
        <nav class="places" aria-label={text::GO_TO}>
            <h2>{ text::GO_TO }</h2>
            <div class="acts">{ for Place::ALL.iter().map(button) }</div>
        </nav>
    }
}
