//! Going to a place. The customer is always in the customer's own section.

use plant::Place;
use wasm_bindgen::JsCast;

use crate::store::{Msg, Tab, WorkHandle};

/// Goes there; to the customer by turning to them.
pub fn go(work: &WorkHandle, place: Place) {
    if place == Place::Customer {
        turn(work, Tab::Call, "customer");
    } else {
        work.dispatch(Msg::Go(Some(place)));
        work.dispatch(Msg::Turn(Tab::Heater));
    }
}

/// Turns to a section, which takes the focus.
pub fn turn(work: &WorkHandle, tab: Tab, section: &str) {
    work.dispatch(Msg::Turn(tab));
    let found = gloo::utils::document().get_element_by_id(section);
    if let Some(section) = found.and_then(|one| one.dyn_into::<web_sys::HtmlElement>().ok()) {
        // Fails only for an element that is not in the page.
        let _ = section.focus();
    }
}
