//! A dialog of the browser's own: it keeps the focus inside and closes on Escape.

use gloo::timers::callback::Timeout;
use web_sys::HtmlDialogElement;
use yew::prelude::*;

use crate::said::use_language;

/// Opens and closes one dialog.
#[derive(Clone, PartialEq)]
pub struct DialogHandle {
    node: NodeRef,
}

impl DialogHandle {
    /// Opens it over the page.
    pub fn open(&self) {
        if let Some(dialog) = self.node.cast::<HtmlDialogElement>() {
            // Fails only when it is open already.
            let _ = dialog.show_modal();
        }
    }

    /// Closes it; the focus goes back to where it came from. In a turn of its own: the whole page is restyled by it.
    pub fn close(&self) {
        if let Some(dialog) = self.node.cast::<HtmlDialogElement>() {
            Timeout::new(0, move || dialog.close()).forget();
        }
    }

    /// A callback that opens it.
    pub fn opener(&self) -> Callback<MouseEvent> {
        let this = self.clone();
        Callback::from(move |_| this.open())
    }

    /// A callback that closes it.
    pub fn closer(&self) -> Callback<MouseEvent> {
        let this = self.clone();
        Callback::from(move |_| this.close())
    }
}

/// A handle for a [`Dialog`].
#[hook]
pub fn use_dialog() -> DialogHandle {
    DialogHandle { node: use_node_ref() }
}

/// A dialog with a heading.
#[derive(Properties, PartialEq)]
pub struct Props {
    /// What opens it.
    pub handle: DialogHandle,
    /// Its heading.
    pub title: AttrValue,
    /// What is in it.
    pub children: Html,
}

/// The dialog.
#[component]
pub fn Dialog(props: &Props) -> Html {
    use_language();
    html! {
        <dialog ref={props.handle.node.clone()} class="dialog" aria-label={&props.title}>
            <div class="dialog-head">
                <h2>{ &props.title }</h2>
                <button type="button" class="quiet" onclick={props.handle.closer()}>
                    { crate::text::CLOSE }
                </button>
            </div>
            { props.children.clone() }
        </dialog>
    }
}
