//! A dialog over the page: it keeps the focus inside, closes on Escape and gives the focus back.
//!
//! The browser's own way to bar the rest of the page restyles all of it, which takes a slow machine longer than a
//! press may. So the dialog lies in the top layer as wide as the window, where it takes every press itself, and turns
//! the focus round at its ends. Where a browser knows no top layer but that of its own dialogs, that is used.

use std::cell::RefCell;
use std::rc::Rc;

use gloo::utils::document;
use wasm_bindgen::JsCast;
use web_sys::{HtmlDialogElement, HtmlElement};
use yew::prelude::*;

use crate::said::use_language;

/// What can have the focus inside a dialog.
const STOPS: &str = "a[href], button:not([disabled]), input, select, textarea, summary";

/// Opens and closes one dialog.
#[derive(Clone, PartialEq)]
pub struct DialogHandle {
    node: NodeRef,
    /// What had the focus before.
    from: Rc<RefCell<Option<HtmlElement>>>,
}

impl DialogHandle {
    fn dialog(&self) -> Option<HtmlDialogElement> {
        self.node.cast()
    }

    /// Whether it is open.
    pub fn is_open(&self) -> bool {
        self.dialog().is_some_and(|dialog| dialog.open())
    }

    /// Opens it over the page.
    pub fn open(&self) {
        let Some(dialog) = self.dialog().filter(|dialog| !dialog.open()) else { return };
        *self.from.borrow_mut() = document().active_element().and_then(|at| at.dyn_into().ok());
        let has_layer = js_sys::Reflect::has(&dialog, &"showPopover".into()).unwrap_or(false);
        if has_layer && dialog.show_popover().is_ok() {
            dialog.show();
        } else {
            // Fails only when it is open already.
            let _ = dialog.show_modal();
        }
    }

    /// Closes it; the focus goes back to where it came from.
    pub fn close(&self) {
        let Some(dialog) = self.dialog() else { return };
        dialog.close();
        if js_sys::Reflect::has(&dialog, &"hidePopover".into()).unwrap_or(false) {
            // Fails only when it was shown in the other way.
            let _ = dialog.hide_popover();
        }
        if let Some(from) = self.from.take() {
            // Gone from the page, it does not take the focus.
            let _ = from.focus();
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

    /// What a key does in it: Escape closes, Tab at either end goes on at the other.
    fn key(&self, event: &KeyboardEvent) {
        let Some(dialog) = self.dialog() else { return };
        match event.key().as_str() {
            "Escape" => self.close(),
            "Tab" => {
                let Some((first, last)) = ends(&dialog) else { return };
                let at = document().active_element();
                let is = |one: &HtmlElement| at.as_ref() == Some(one.as_ref());
                let (leaves, to) = match event.shift_key() {
                    true => (is(&first) || is(&dialog), last),
                    false => (is(&last), first),
                };
                if !leaves {
                    return;
                }
                // An element of the page that is shown takes the focus.
                let _ = to.focus();
            }
            _ => return,
        }
        event.prevent_default();
    }
}

/// First and last of what can have the focus in it.
fn ends(dialog: &HtmlDialogElement) -> Option<(HtmlElement, HtmlElement)> {
    let all = dialog.query_selector_all(STOPS).ok()?;
    let shown = |at: u32| {
        let one = all.item(at)?.dyn_into::<HtmlElement>().ok()?;
        (one.offset_width() > 0).then_some(one)
    };
    Some(((0..all.length()).find_map(shown)?, (0..all.length()).rev().find_map(shown)?))
}

/// A handle for a [`Dialog`].
#[hook]
pub fn use_dialog() -> DialogHandle {
    DialogHandle { node: use_node_ref(), from: use_mut_ref(|| None) }
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
    /// Its further style.
    #[prop_or_default]
    pub class: Classes,
    /// Told when it has closed.
    #[prop_or_default]
    pub onclose: Callback<Event>,
    /// Told of keys pressed in it that it does not take itself.
    #[prop_or_default]
    pub onkey: Callback<KeyboardEvent>,
}

/// The dialog.
#[component]
pub fn Dialog(props: &Props) -> Html {
    use_language();
    let onkeydown = {
        let (handle, onkey) = (props.handle.clone(), props.onkey.clone());
        Callback::from(move |event: KeyboardEvent| {
            handle.key(&event);
            if !event.default_prevented() {
                onkey.emit(event);
            }
        })
    };
    html! {
        <dialog
            ref={props.handle.node.clone()}
            class={classes!("dialog", props.class.clone())}
            popover="manual"
            tabindex="-1"
            aria-modal="true"
            aria-label={&props.title}
            onclose={&props.onclose}
            {onkeydown}
        >
            <div class="dialog-sheet">
                <div class="dialog-head">
                    <h2>{ &props.title }</h2>
                    <button type="button" class="quiet" onclick={props.handle.closer()}>
                        { crate::text::CLOSE }
                    </button>
                </div>
                { props.children.clone() }
            </div>
        </dialog>
    }
}
