//! The button in the sheet's head, and the dialog that it and the key open.

use wasm_bindgen::JsCast;
use web_sys::{HtmlDialogElement, HtmlElement};
use yew::prelude::*;

use super::key::use_key;
use super::sheet::HereSheet;
use crate::said::use_voice;
use crate::store::World;

/// The world.
#[derive(Properties, PartialEq)]
pub struct Props {
    /// The world.
    pub session: World,
}

/// The button. What is offered is worked out only while the dialog is open.
#[component]
pub fn HereButton(props: &Props) -> Html {
    let voice = use_voice();
    let node = use_node_ref();
    let open = use_state(|| false);
    let show = {
        let (node, open) = (node.clone(), open.setter());
        Callback::from(move |()| {
            let Some(dialog) = node.cast::<HtmlDialogElement>() else { return };
            if dialog.open() {
                dialog.close();
            } else {
                open.set(true);
                // Fails only when it is open already.
                let _ = dialog.show_modal();
            }
        })
    };
    use_key(show.clone());
    let close = {
        let node = node.clone();
        Callback::from(move |()| {
            if let Some(dialog) = node.cast::<HtmlDialogElement>() {
                dialog.close();
            }
        })
    };
    // Wherever the focus is in the sheet: it may be on the way out of it.
    let onkeydown = {
        let node = node.clone();
        Callback::from(move |event: KeyboardEvent| {
            let key = event.key();
            let plain = !(event.ctrl_key() || event.alt_key() || event.meta_key());
            let mut letters = key.chars();
            let one = letters
                .next()
                .filter(|letter| plain && letter.is_ascii_alphanumeric() && letters.next().is_none());
            let Some(one) = one else { return };
            let sheet = node.cast::<HtmlDialogElement>();
            let found =
                sheet.and_then(|sheet| sheet.query_selector(&format!("[data-key='{one}']")).ok().flatten());
            if let Some(button) = found.and_then(|found| found.dyn_into::<HtmlElement>().ok()) {
                event.prevent_default();
                button.click();
            }
        })
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
            <dialog ref={node} class="dialog here-sheet" aria-label={title.clone()} {onclose} {onkeydown}>
                <div class="dialog-head">
                    <h2>{ title }</h2>
                    <button type="button" class="quiet" onclick={close.reform(|_: MouseEvent| ())}>{ crate::text::CLOSE }</button>
                </div>
                if *open {
                    <HereSheet session={props.session.clone()} onclose={close} />
                }
            </dialog>
        </>
    }
}
