//! The places as a row of buttons: the same as on the drawing, for whoever likes a list better.

use plant::{Layout, Level, Place};
use yew::prelude::*;

use super::go;
use crate::store::use_work;
use crate::text;

/// The row.
#[component]
pub fn Places() -> Html {
    let work = use_work();
    let layout = work.session().map_or(Layout::NonSimultaneous, |s| s.home.plant.wiring.layout);
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
                { text::place_of(place, layout) }
            </button>
        }
    };
    // Most houses have no box in the line, and a small heater has one compartment.
    let plant = work.session().map(|session| &session.home.plant);
    let is_there = |place: Place| match place {
        Place::InLineBox => plant.is_some_and(|plant| plant.wiring.boxed),
        Place::LowerCompartment => plant.is_none_or(|plant| plant.plate.has(Level::Lower)),
        _ => true,
    };
    html! {
        <nav class="places" aria-label={text::GO_TO}>
            <h2>{ text::GO_TO }</h2>
            <div class="acts">{ for Place::ALL.iter().filter(|place| is_there(**place)).map(button) }</div>
        </nav>
    }
}
