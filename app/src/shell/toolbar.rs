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
/// Marks the button that a row was left at.
const STOP: &str = "data-stop";

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
        "Tab" => {
            return each(document().query_selector_all(ROW).ok()).iter().for_each(|row| settle(row, &at));
        }
        "ArrowLeft" | "ArrowUp" => -1,
        "ArrowRight" | "ArrowDown" => 1,
        "Home" => isize::MIN,
        "End" => isize::MAX,
        _ => return,
    };
    // With these the arrows are the browser's own.
    if event.alt_key() || event.meta_key() || event.ctrl_key() {
        return;
    }
    let Some(row) = at.closest(ROW).ok().flatten().filter(|_| at.matches(BUTTONS).unwrap_or(false)) else {
        return;
    };
    let all = each(row.query_selector_all(BUTTONS).ok());
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
    let all = each(row.query_selector_all(BUTTONS).ok());
    let left = |one: &&Element| one.has_attribute(STOP);
    let stop = all.iter().find(|one| *one == at).or_else(|| all.iter().find(left)).or(all.first());
    for one in &all {
        // Setting or removing a plain attribute cannot fail.
        let _ = if Some(one) == stop {
            one.set_attribute("tabindex", "0").and_then(|()| one.set_attribute(STOP, ""))
        } else {
            one.set_attribute("tabindex", "-1").and_then(|()| one.remove_attribute(STOP))
        };
    }
}

fn each(all: Option<NodeList>) -> Vec<Element> {
    let all = all.as_ref();
    // All of them are elements.
    (0..all.map_or(0, NodeList::length)).filter_map(|at| Some(all?.item(at)?.unchecked_into())).collect()
}
