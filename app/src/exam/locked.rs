//! After an exam: hand it in. The debrief stays shut until the instructor's opening file is loaded.

use drill::{Attempt, Opening};
use yew::prelude::*;

use crate::debrief::HandIn;
use crate::files::{FilePick, Picked};
use crate::said::use_voice;

/// The attempt.
#[derive(Properties, PartialEq)]
pub struct Props {
    /// What was done.
    pub attempt: std::rc::Rc<Attempt>,
    /// Told when an opening file fits.
    pub onopen: Callback<()>,
}

/// The sheet after the exam.
#[component]
pub fn Locked(props: &Props) -> Html {
    let voice = use_voice();
    let problem = use_state(String::new);
    let onpicked = {
        let (attempt, told, problem) = (props.attempt.clone(), props.onopen.clone(), problem.setter());
        let unreadable = voice.text("page-file-unreadable");
        let other = voice.text("page-opening-other");
        let voice = voice.clone();
        Callback::from(move |files: Vec<Picked>| {
            let Some(file) = files.into_iter().next() else { return };
            match file.text.as_deref().map(Opening::read) {
                Some(Ok(opening)) if opening.opens(&attempt.order) => told.emit(()),
                Some(Ok(_)) => problem.set(other.clone()),
                Some(Err(error)) => problem.set(voice.opening_error(&error)),
                None => problem.set(unreadable.clone()),
            }
        })
    };
    html! {
        <>
            <h1>{ voice.text("page-exam-over") }</h1>
            <p class="lead">{ voice.text("page-exam-over-lead") }</p>
            <div class="door-grid">
                <HandIn attempt={props.attempt.clone()} />
                <section class="card door" data-door="opening">
                    <h2>{ voice.text("page-opening") }</h2>
                    <p>{ voice.text("page-opening-about") }</p>
                    if !problem.is_empty() {
                        <p class="warn" role="alert">{ &*problem }</p>
                    }
                    <FilePick label={voice.text("page-opening-load")} {onpicked} hook="opening" />
                </section>
            </div>
        </>
    }
}
