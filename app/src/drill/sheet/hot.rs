//! Keys for parts of a drawing that act as buttons.

use yew::prelude::*;

/// Enter and the space bar press it.
pub fn hot_keys(press: Callback<()>) -> Callback<KeyboardEvent> {
    Callback::from(move |event: KeyboardEvent| {
        if matches!(event.key().as_str(), "Enter" | " ") {
            event.prevent_default();
            press.emit(());
        }
    })
}
