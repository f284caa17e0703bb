//! A code typed, a link pasted, or a drill's file opened.

use drill::Order;
use web_sys::HtmlInputElement;
use yew::prelude::*;

use crate::compose::read_drill;
use crate::files::{FilePick, Picked};
use crate::said::use_voice;

/// What follows.
#[derive(Properties, PartialEq)]
pub struct Props {
    /// Told the drill that was read.
    pub onorder: Callback<Order>,
}

/// The field and the file button.
#[component]
pub fn Enter(props: &Props) -> Html {
    let voice = use_voice();
    let typed = use_state(String::new);
    let problem = use_state(String::new);
    let read = {
        let (told, problem) = (props.onorder.clone(), problem.setter());
        Callback::from(move |text: String| match read_drill(&text) {
            Ok(order) => told.emit(order),
            Err(why) => problem.set(why),
        })
    };
    let oninput = {
        let typed = typed.setter();
        Callback::from(move |event: InputEvent| {
            typed.set(event.target_unchecked_into::<HtmlInputElement>().value());
        })
    };
    let onsubmit = {
        let (read, typed) = (read.clone(), typed.clone());
        Callback::from(move |event: SubmitEvent| {
            event.prevent_default();
            read.emit((*typed).clone());
        })
    };
    let onpicked = picked(read, problem.setter(), voice.text("page-file-unreadable"));
    html! {
        <section class="card door" data-door="enter">
            <h2>{ voice.text("page-door-code") }</h2>
            <p>{ voice.text("page-door-code-about") }</p>
            <form {onsubmit}>
                <label class="field">
                    <span>{ voice.text("page-code") }</span>
                    <input class="code" value={(*typed).clone()} {oninput} autocomplete="off" autocapitalize="characters" spellcheck="false" maxlength="600" data-field="code" />
                </label>
                if !problem.is_empty() {
                    <p class="warn" role="alert">{ &*problem }</p>
                }
                <div class="row">
                    <button type="submit" data-act="enter-code">{ voice.text("page-code-open") }</button>
                    <FilePick label={voice.text("page-file-open")} {onpicked} hook="drill" />
                </div>
            </form>
        </section>
    }
}

fn picked(
    read: Callback<String>,
    problem: UseStateSetter<String>,
    unreadable: String,
) -> Callback<Vec<Picked>> {
    Callback::from(move |files: Vec<Picked>| match files.into_iter().next() {
        Some(Picked { text: Some(text), .. }) => read.emit(text),
        Some(Picked { name, text: None }) => problem.set(format!("{name}: {unreadable}")),
        None => {}
    })
}
