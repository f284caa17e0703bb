//! A button that takes files from the reader.

use wasm_bindgen::JsValue;
use wasm_bindgen_futures::JsFuture;
use web_sys::{File, HtmlInputElement};
use yew::platform::spawn_local;
use yew::prelude::*;

/// A file that was picked.
#[derive(Clone, PartialEq, Debug)]
pub struct Picked {
    /// Its name, as the device has it.
    pub name: String,
    /// Its text; `None` when it could not be read or is far too large.
    pub text: Option<String>,
}

/// What the button is for.
#[derive(Properties, PartialEq)]
pub struct Props {
    /// What it says.
    pub label: AttrValue,
    /// Several at once.
    #[prop_or_default]
    pub multiple: bool,
    /// Told the files, in the order of their names.
    pub onpicked: Callback<Vec<Picked>>,
    /// A name for tests.
    pub hook: AttrValue,
}

/// The browser's own file input inside a label: keyboard, touch and screen readers know it.
#[component]
pub fn FilePick(props: &Props) -> Html {
    let onchange = {
        let told = props.onpicked.clone();
        Callback::from(move |event: Event| {
            let input = event.target_unchecked_into::<HtmlInputElement>();
            let files = files_of(&input);
            let told = told.clone();
            spawn_local(async move {
                let mut picked = Vec::with_capacity(files.len());
                for file in &files {
                    picked.push(read(file).await);
                }
                quantity::sort::sort_by_key(&mut picked, |one| one.name.clone());
                // The same file may be picked again after it was put right.
                input.set_value("");
                told.emit(picked);
            });
        })
    };
    html! {
        <label class="pick button">
            <span>{ &props.label }</span>
            <input
                type="file"
                accept=".json,application/json"
                multiple={props.multiple}
                data-pick={&props.hook}
                {onchange}
            />
        </label>
    }
}

fn files_of(input: &HtmlInputElement) -> Vec<File> {
    let Some(list) = input.files() else { return Vec::new() };
    (0..list.length()).filter_map(|at| list.item(at)).collect()
}

async fn read(file: &File) -> Picked {
    let text = if file.size() > drill::attempt::LARGEST_FILE as f64 {
        None
    } else {
        JsFuture::from(file.text()).await.ok().as_ref().and_then(JsValue::as_string)
    };
    Picked { name: file.name(), text }
}
