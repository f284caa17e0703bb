//! One stop of the Tab key for each row of buttons, and the arrows inside it: what has the role of a toolbar (WAI-ARIA
//! Authoring Practices, toolbar, with a roving tabindex). A row comes back to the button it was left at.

use gloo::events::{EventListener, EventListenerOptions};
use gloo::utils::document;
use wasm_bindgen::JsCast;
use web_sys::{Element, HtmlElement, KeyboardEvent, NodeList};
use yew::prelude::*;

/// A row, and what is in it.
const ROW: &str = "[role=toolbar]";
const BUTTONS: &str = "button:not([disabled]), [role=button]";

/// Keys in every row of the page, whatever is drawn in it by then.
#[hook]
pub fn use_toolbars() {
    use_effect_with((), |()| {
        let options = EventListenerOptions::enable_prevent_default();
        let listener = EventListener::new_with_options(&document(), "keydown", options, |event| {
            if let Some(event) = event.dyn_ref::<KeyboardEvent>() {
                press(event);
            }
        });
        move || drop(listener)
    });
}

fn press(event: &KeyboardEvent) {
    let Some(at) = document().active_element() else { return };
    let by = match event.key().as_str() {
        // Right before the browser goes by it: rows are drawn again and again, also by turns.
        "Tab" => return each(document().query_selector_all(ROW).ok()).for_each(|row| settle(&row, &at)),
        "ArrowLeft" | "ArrowUp" => -1,
        "ArrowRight" | "ArrowDown" => 1,
        "Home" => isize::MIN,
        "End" => isize::MAX,
        _ => return,
    };
    let Some(row) = at.closest(ROW).ok().flatten().filter(|_| at.matches(BUTTONS).unwrap_or(false)) else {
        return;
    };
    let all: Vec<Element> = each(row.query_selector_all(BUTTONS).ok()).collect();
    let here = all.iter().position(|one| *one == at).unwrap_or_default();
    let to = here.saturating_add_signed(by).min(all.len() - 1);
    event.prevent_default();
    if let Some(to) = all.get(to) {
        // A part of a drawing takes the focus by the same name.
        let _ = to.unchecked_ref::<HtmlElement>().focus();
    }
}

/// The button of a row that Tab stops at: the one with the focus, else the one it was left at, else the first.
fn settle(row: &Element, at: &Element) {
    const STOP: &str = "data-stop";
    let left = row.query_selector("[data-stop]").ok().flatten();
    let first = || row.query_selector(BUTTONS).ok().flatten();
    let stop = Some(at.clone()).filter(|at| row.contains(Some(at)) && at.matches(BUTTONS).unwrap_or(false));
    let stop = stop.or_else(|| left.clone()).or_else(first);
    // Setting a plain attribute cannot fail.
    if let Some(left) = left {
        let _ = left.remove_attribute(STOP);
    }
    for one in each(row.query_selector_all(BUTTONS).ok()) {
        let _ = one.set_attribute("tabindex", if Some(&one) == stop.as_ref() { "0" } else { "-1" });
    }
    if let Some(stop) = stop {
        let _ = stop.set_attribute(STOP, "");
    }
}

fn each(all: Option<NodeList>) -> impl Iterator<Item = Element> {
    let count = all.as_ref().map_or(0, NodeList::length);
    (0..count).filter_map(move |at| all.as_ref()?.item(at)?.dyn_into().ok())
}
