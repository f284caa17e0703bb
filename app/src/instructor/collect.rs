//! Attempts read in: from files or pasted, judged one after the other, tabulated.

use std::rc::Rc;

use drill::Grader;
use gloo::timers::callback::Timeout;
use web_sys::HtmlTextAreaElement;
use yew::prelude::*;

use super::collected::{Collected, Msg};
use super::desk::Review;
use super::row::judge;
use super::table::Table;
use crate::files::{FilePick, Picked};
use crate::said::use_voice;

/// Time between two attempts, in which the page draws and answers.
const BREATH_MS: u32 = 4;

/// The half that reads in.
#[component]
pub fn Collect() -> Html {
    let voice = use_voice();
    let all = use_reducer(Collected::default);
    let open = use_state(|| None::<usize>);
    use_judge(&all);
    let onpicked = {
        let (all, unreadable) = (all.dispatcher(), voice.text("page-file-unreadable"));
        Callback::from(move |files: Vec<Picked>| all.dispatch(Msg::Picked(files, unreadable.clone())))
    };
    let onopen = {
        let open = open.setter();
        Callback::from(move |row| open.set(Some(row)))
    };
    let onback = {
        let open = open.setter();
        Callback::from(move |()| open.set(None))
    };
    if let Some(attempt) = open.and_then(|row| all.attempt(row)) {
        return html! { <Review {attempt} {onback} /> };
    }
    html! {
        <section class="card wide" data-door="collect">
            <h1>{ voice.text("instructor-collect") }</h1>
            <p>{ voice.text("instructor-collect-about") }</p>
            <div class="row">
                <FilePick label={voice.text("instructor-pick")} multiple=true {onpicked} hook="attempts" />
            </div>
            <Paste onpasted={pasted(&all, voice.text("instructor-pasted"))} />
            <p role="status" class="quiet-note">{ progress(&voice, &all) }</p>
            <Table all={Rc::new((*all).clone())} {onopen} onclear={emptier(&all)} />
        </section>
    }
}

fn emptier(all: &UseReducerHandle<Collected>) -> Callback<()> {
    let all = all.dispatcher();
    Callback::from(move |()| all.dispatch(Msg::Cleared))
}

fn pasted(all: &UseReducerHandle<Collected>, name: String) -> Callback<String> {
    let all = all.dispatcher();
    Callback::from(move |text: String| {
        let file = Picked { name: name.clone(), text: Some(text) };
        all.dispatch(Msg::Picked(vec![file], String::new()));
    })
}

fn progress(voice: &words::Voice, all: &Collected) -> String {
    let (judged, total) = all.progress();
    if total == 0 {
        return String::new();
    }
    let fills = [("judged", (judged as u32).into()), ("total", (total as u32).into())];
    voice.filled(if judged < total { "instructor-judging" } else { "instructor-judged" }, &fills)
}

/// Judges what waits, one attempt at a time. Drills that several learners worked are made once.
#[hook]
fn use_judge(all: &UseReducerHandle<Collected>) {
    let grader = use_mut_ref(Grader::new);
    let (next, dispatcher) = (all.waiting(), all.dispatcher());
    let attempt = next.and_then(|row| all.attempt(row));
    let name = next.and_then(|row| all.items.get(row)).map(|item| item.name.clone()).unwrap_or_default();
    use_effect_with((next, attempt), move |(next, attempt)| {
        let timer = next.zip(attempt.clone()).map(|(row, attempt)| {
            Timeout::new(BREATH_MS, move || {
                let judged = judge(&mut grader.borrow_mut(), &name, &attempt);
                dispatcher.dispatch(Msg::Judged(row, judged));
            })
        });
        move || drop(timer)
    });
}

#[derive(Properties, PartialEq)]
struct PasteProps {
    /// Told a text.
    onpasted: Callback<String>,
}

/// An attempt pasted as text.
#[component]
fn Paste(props: &PasteProps) -> Html {
    let voice = use_voice();
    let field = use_node_ref();
    let onclick = {
        let (field, told) = (field.clone(), props.onpasted.clone());
        Callback::from(move |_| {
            let Some(field) = field.cast::<HtmlTextAreaElement>() else { return };
            if !field.value().trim().is_empty() {
                told.emit(field.value());
                field.set_value("");
            }
        })
    };
    html! {
        <details>
            <summary>{ voice.text("instructor-paste") }</summary>
            <label class="field">
                <span>{ voice.text("page-attempt-text") }</span>
                <textarea ref={field} rows="5" spellcheck="false" data-field="paste" />
            </label>
            <button type="button" {onclick} data-act="paste">{ voice.text("instructor-paste-add") }</button>
        </details>
    }
}
