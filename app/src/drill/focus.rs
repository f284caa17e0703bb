//! Keeps the focus near what was done: an act may take away the very button that did it, and without this the
//! focus would fall to the top of the page.

use gloo::events::EventListener;
use gloo::utils::document;
use wasm_bindgen::JsCast;
use web_sys::{Element, HtmlElement};
use yew::prelude::*;

/// What the keyboard stops at.
const STOPS: &str =
    "button:not([disabled]), a[href], select, input, summary, [role=\"button\"][tabindex=\"0\"]";

/// After each act, and again when the page has followed it everywhere: when what had the focus is gone, the nearest thing around it that is left takes it.
#[hook]
pub fn use_kept_focus(acts: [usize; 2]) {
    let last = use_mut_ref(Vec::<Element>::new);
    {
        let last = last.clone();
        use_effect_with((), move |()| {
            let listener = EventListener::new(&document(), "focusin", move |event| {
                let target = event.target().and_then(|target| target.dyn_into::<Element>().ok());
                *last.borrow_mut() = std::iter::successors(target, |one| one.parent_element()).collect();
            });
            move || drop(listener)
        });
    }
    use_effect_with(acts, move |_| {
        let around = last.borrow();
        let gone = around.first().is_some_and(|one| !one.is_connected());
        let left = around.iter().find(|one| one.is_connected()).cloned();
        drop(around);
        if let Some(left) = left.filter(|_| gone) {
            take(&left);
        }
    });
}

/// Gives the focus to the first thing inside that takes it, or else to the thing itself.
fn take(left: &Element) {
    let inside = left.query_selector(STOPS).ok().flatten();
    let target = inside.unwrap_or_else(|| {
        // Fails only for a name that is no attribute's.
        let _ = left.set_attribute("tabindex", "-1");
        left.clone()
    });
    if let Some(target) = target.dyn_ref::<HtmlElement>() {
        // Fails only for an element that is not in the page.
        let _ = target.focus();
    }
}
