//! The key `?`, which opens the sheet from anywhere on the page. A single letter can get in the way of those who
//! dictate or press keys by accident, so it can be switched off (WCAG 2.2, 2.1.4).

use gloo::events::{EventListener, EventListenerOptions};
use gloo::utils::document;
use wasm_bindgen::JsCast;
use web_sys::{Element, KeyboardEvent};
use yew::prelude::*;

use super::setting::Setting;

/// Told when the key is pressed outside of a field.
#[hook]
pub fn use_key(told: Callback<()>) {
    use_effect_with((), move |()| {
        // The sign must not land in what the sheet opens.
        let options = EventListenerOptions::enable_prevent_default();
        let listener = EventListener::new_with_options(&document(), "keydown", options, move |event| {
            let Some(event) = event.dyn_ref::<KeyboardEvent>() else { return };
            let target = event.target().and_then(|target| target.dyn_into::<Element>().ok());
            // Only a field takes letters.
            let writes = target
                .is_some_and(|one| one.matches("input:not([type=checkbox]), textarea").unwrap_or(false));
            if event.key() == "?" && !writes && Setting::Key.is_on() {
                event.prevent_default();
                told.emit(());
            }
        });
        move || drop(listener)
    });
}
