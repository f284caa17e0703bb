//! Attempts read in: from files or pasted, judged one after the other, tabulated.

use std::rc::Rc;

use web_sys::HtmlTextAreaElement;
use yew::prelude::*;

use super::collected::{Collected, Msg};
use super::desk::Review;
use super::row::Row;
use super::table::Table;
use crate::away::{self, Answer, Task};
use crate::files::{FilePick, Picked};
use crate::said::use_voice;
use crate::shell::Busy;

/// What is there at the beginning.
#[derive(Properties, PartialEq)]
pub struct Props {
    /// Files; none on the page itself.
    #[prop_or_default]
    pub files: Vec<Picked>,
}

/// The half that reads in.
#[component]
pub fn Collect(props: &Props) -> Html {
    let voice = use_voice();
    let all = use_reducer(|| Collected::of(&props.files, &voice.text("page-file-unreadable")));
    let open = use_state(|| None::<usize>);
    let stopped = use_state(|| false);
    use_judge(&all, *stopped);
    let working = !*stopped && all.waiting().is_some();
    let onstop = {
        let stopped = stopped.setter();
        Callback::from(move |()| stopped.set(true))
    };
    let ongo = {
        let stopped = stopped.setter();
        Callback::from(move |_: MouseEvent| stopped.set(false))
    };
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
            if working {
                <Busy said={progress(&voice, &all)} done={done(&all)} {onstop} />
            } else {
                <p role="status" class="quiet-note">{ progress(&voice, &all) }</p>
            }
            if *stopped && all.waiting().is_some() {
                <button type="button" data-act="go-on" onclick={ongo}>{ voice.text("page-go-on") }</button>
            }
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

/// The judged share.
fn done(all: &Collected) -> f64 {
    let (judged, total) = all.progress();
    judged as f64 / (total as f64).max(1.0)
}

/// Judges what waits, one attempt at a time. Drills that several learners worked are made once.
#[hook]
fn use_judge(all: &UseReducerHandle<Collected>, stopped: bool) {
    let (next, dispatcher) = (all.waiting().filter(|_| !stopped), all.dispatcher());
    let attempt = next.and_then(|row| all.attempt(row));
    let name = next.and_then(|row| all.items.get(row)).map(|item| item.name.clone()).unwrap_or_default();
    use_effect_with((next, attempt), move |(next, attempt)| {
        let asked = next.zip(attempt.clone()).map(|(row, attempt)| {
            let mode = attempt.order.mode;
            let told = Callback::from(move |answer| {
                let judged = match answer {
                    Answer::Graded(class) => Ok(Row { class: *class, mode }),
                    Answer::Failed(why) => Err(why),
                    // Only a row answers this question.
                    _ => return,
                };
                dispatcher.dispatch(Msg::Judged(row, Box::new(judged)));
            });
            away::ask(Task::Grade(name, attempt.write(), attempt.seal), told)
        });
        move || drop(asked)
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
