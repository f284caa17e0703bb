//! A text to copy.

use gloo::utils::window;
use wasm_bindgen_futures::JsFuture;
use web_sys::HtmlTextAreaElement;
use yew::platform::spawn_local;
use yew::prelude::*;

use crate::said::use_voice;

/// What is copied.
#[derive(Properties, PartialEq)]
pub struct Props {
    /// The text.
    pub text: AttrValue,
    /// What it is.
    pub label: AttrValue,
    /// Lines shown of it.
    #[prop_or(3)]
    pub rows: u32,
    /// A name for tests.
    pub hook: AttrValue,
}

/// How copying went.
#[derive(Clone, Copy, PartialEq)]
enum Went {
    NotYet,
    Copied,
    /// The browser refused: the text is selected, the reader copies it.
    Selected,
}

/// The text in a field of its own, with a button that copies it.
#[component]
pub fn CopyText(props: &Props) -> Html {
    let voice = use_voice();
    let field = use_node_ref();
    let went = use_state(|| Went::NotYet);
    {
        let went = went.setter();
        use_effect_with(props.text.clone(), move |_| went.set(Went::NotYet));
    }
    let onclick = copier(props.text.clone(), field.clone(), went.setter());
    let said = match *went {
        Went::NotYet => String::new(),
        Went::Copied => voice.text("page-copied"),
        Went::Selected => voice.text("page-selected"),
    };
    html! {
        <div class="copy">
            <label class="field">
                <span>{ &props.label }</span>
                <textarea
                    ref={field}
                    readonly=true
                    rows={props.rows.to_string()}
                    spellcheck="false"
                    data-copy={&props.hook}
                    value={props.text.clone()}
                />
            </label>
            <div class="row">
                <button type="button" {onclick} data-act={format!("copy-{}", props.hook)}>
                    { voice.text("page-copy") }
                </button>
                <span role="status" class="quiet-note">{ said }</span>
            </div>
        </div>
    }
}

fn copier(text: AttrValue, field: NodeRef, went: UseStateSetter<Went>) -> Callback<MouseEvent> {
    Callback::from(move |_| {
        let (text, field, went) = (text.clone(), field.clone(), went.clone());
        // Absent on a page that was opened from a file or over plain http.
        let board = js_sys::Reflect::get(&window().navigator(), &"clipboard".into())
            .is_ok_and(|board| !board.is_undefined())
            .then(|| window().navigator().clipboard());
        spawn_local(async move {
            let copied = match board {
                Some(board) => JsFuture::from(board.write_text(&text)).await.is_ok(),
                None => false,
            };
            if let Some(field) = field.cast::<HtmlTextAreaElement>().filter(|_| !copied) {
                field.select();
            }
            went.set(if copied { Went::Copied } else { Went::Selected });
        });
    })
}
