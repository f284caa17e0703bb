//! The question mark, and the dialog that it and the key open.

use wasm_bindgen::JsCast;
use web_sys::{Element, HtmlElement};
use yew::prelude::*;

use super::key::use_key;
use crate::said::use_voice;
use crate::shell::{Dialog, use_dialog};

/// What is in the dialog.
#[derive(Properties, PartialEq)]
pub struct Props {
    /// Draws it, told how to close the dialog.
    pub sheet: Callback<Callback<()>, Html>,
}

/// The button. What is in the dialog is worked out only while it is open.
#[component]
pub fn HereButton(props: &Props) -> Html {
    let voice = use_voice();
    let dialog = use_dialog();
    let open = use_state(|| false);
    let show = {
        let (dialog, open) = (dialog.clone(), open.setter());
        Callback::from(move |()| {
            if dialog.is_open() {
                dialog.close();
            } else {
                open.set(true);
                dialog.open();
            }
        })
    };
    use_key(show.clone());
    let close = {
        let dialog = dialog.clone();
        Callback::from(move |()| dialog.close())
    };
    let onclose = {
        let open = open.setter();
        Callback::from(move |_: Event| open.set(false))
    };
    let title = voice.text("here-title");
    html! {
        <>
            <button type="button" class="here" data-act="here" aria-label={title.clone()} title={title.clone()} aria-haspopup="dialog" onclick={show.reform(|_: MouseEvent| ())}>
                { "?" }
            </button>
            <Dialog handle={dialog} title={title} class="here-sheet" {onclose} onkey={Callback::from(|event| press(&event))}>
                if *open {
                    { props.sheet.emit(close) }
                }
            </Dialog>
        </>
    }
}

/// Presses the button that has the key's letter or digit, wherever in the sheet the focus is.
fn press(event: &KeyboardEvent) {
    let key = event.key();
    let plain = !(event.ctrl_key() || event.alt_key() || event.meta_key());
    let mut letters = key.chars();
    let one =
        letters.next().filter(|letter| plain && letter.is_ascii_alphanumeric() && letters.next().is_none());
    let Some(one) = one else { return };
    let inside = event.target().and_then(|target| target.dyn_into::<Element>().ok());
    let sheet = inside.and_then(|inside| inside.closest("dialog").ok().flatten());
    let found = sheet.and_then(|sheet| sheet.query_selector(&format!("[data-key='{one}']")).ok().flatten());
    if let Some(button) = found.and_then(|found| found.dyn_into::<HtmlElement>().ok()) {
        event.prevent_default();
        button.click();
    }
}
