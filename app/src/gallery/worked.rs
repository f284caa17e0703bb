//! A component in a state that only a hand brings about: something written into a field, something pressed, and after it
//! whatever that takes.

use gloo::timers::callback::Timeout;
use wasm_bindgen::JsCast;
use web_sys::{Element, HtmlElement, HtmlInputElement, InputEvent, InputEventInit};
use yew::prelude::*;

/// How soon what is not there yet is looked for again.
const AGAIN_MS: u32 = 30;

/// What is done.
#[derive(Properties, PartialEq)]
pub struct Props {
    /// A field by its selector, and what is written into it.
    #[prop_or_default]
    pub write: Option<(&'static str, AttrValue)>,
    /// Buttons, links, boxes, by their selectors.
    #[prop_or_default]
    pub press: Vec<&'static str>,
    /// What it is done to.
    pub children: Html,
}

/// The component. It counts as being filled until all of it is done.
#[component]
pub fn Worked(props: &Props) -> Html {
    let node = use_node_ref();
    let tried = use_state(|| 0_u32);
    let done = use_state(|| 0_usize);
    let steps: Vec<(&'static str, Option<AttrValue>)> = props
        .write
        .iter()
        .map(|(field, text)| (*field, Some(text.clone())))
        .chain(props.press.iter().map(|button| (*button, None)))
        .collect();
    let next = steps.get(*done).cloned();
    let under_way = next.is_some();
    {
        let node = node.clone();
        use_effect_with((*done, *tried), move |&(before, times)| {
            let turn = next.map(|(selector, text)| {
                Timeout::new(AGAIN_MS, move || {
                    let root = node.cast::<Element>();
                    match root.and_then(|root| root.query_selector(selector).ok().flatten()) {
                        Some(one) => {
                            act(&one, text.as_deref());
                            done.set(before + 1);
                        }
                        None => tried.set(times + 1),
                    }
                })
            });
            move || drop(turn)
        });
    }
    html! { <div ref={node} class={classes!(under_way.then_some("filling"))}>{ props.children.clone() }</div> }
}

/// Writes a text, or presses.
fn act(one: &Element, text: Option<&str>) {
    let Some(text) = text else {
        if let Some(one) = one.dyn_ref::<HtmlElement>() {
            one.click();
        }
        return;
    };
    let Some(field) = one.dyn_ref::<HtmlInputElement>() else { return };
    field.set_value(text);
    let how = InputEventInit::new();
    how.set_bubbles(true);
    if let Ok(event) = InputEvent::new_with_event_init_dict("input", &how) {
        // Cancelled by nobody.
        let _ = field.dispatch_event(&event);
    }
}
