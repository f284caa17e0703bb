//! The places as a row of buttons: the same as on the drawing, for whoever likes a list better.

use bench::Session;
use plant::{Level, Place};
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
    let there = |place: &&Place| work.session().is_none_or(|session| is_there(session, **place));
    html! {
        <nav class="places" aria-label={text::GO_TO}>
            <h2>{ text::GO_TO }</h2>
            <div class="acts" role="toolbar" aria-label={text::GO_TO}>{ for Place::ALL.iter().filter(there).map(button) }</div>
        </nav>
    }
}

/// Whether a house has a place: most have no box in the line, a small heater has one compartment, and one that was carried
/// out took its own along.
pub fn is_there(session: &Session, place: Place) -> bool {
    let plant = &session.home.plant;
    let stands = plant.plumbing.stand.is_there();
    match place {
        Place::InLineBox => plant.wiring.boxed,
        Place::LowerCompartment => stands && plant.plate.has(Level::Lower),
        Place::UpperCompartment | Place::Relief | Place::Drain => stands,
        _ => true,
    }
}
