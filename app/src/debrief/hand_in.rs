//! The attempt as a file and as text, and leaving a shared device clean.

use std::rc::Rc;

use drill::Attempt;
use yew::prelude::*;

use crate::files::{CopyText, file_name, save};
use crate::said::use_voice;
use crate::shell::{ClearDevice, use_unfolded};

/// The attempt.
#[derive(Properties, PartialEq)]
pub struct Props {
    /// What was done.
    pub attempt: Rc<Attempt>,
}

/// The card.
#[component]
pub fn HandIn(props: &Props) -> Html {
    let voice = use_voice();
    let text = use_memo(props.attempt.clone(), |attempt| attempt.write());
    let failed = use_state(|| false);
    let onclick = {
        let (text, failed) = (text.clone(), failed.setter());
        let name = file_name(&["attempt", &props.attempt.learner], "json");
        Callback::from(move |_| failed.set(!save(&name, "application/json", &text)))
    };
    let (unfolded, ontoggle) = use_unfolded();
    let learner = if props.attempt.learner.is_empty() {
        voice.text("page-no-name")
    } else {
        props.attempt.learner.clone()
    };
    let acts = props.attempt.actions.len() as u32;
    html! {
        <section class="card door hand-in" data-door="hand-in">
            <h2>{ voice.text("page-hand-in") }</h2>
            <p>{ voice.filled("page-hand-in-about", &[("learner", learner.into()), ("acts", acts.into())]) }</p>
            <div class="row">
                <button type="button" class="go" {onclick} data-act="save-attempt">{ voice.text("page-save-attempt") }</button>
            </div>
            if *failed {
                <p class="warn" role="alert">{ voice.text("page-save-failed") }</p>
            }
            <details {ontoggle}>
                <summary>{ voice.text("page-as-text") }</summary>
                if unfolded {
                    <CopyText text={(*text).clone()} label={voice.text("page-attempt-text")} rows=5 hook="attempt" />
                }
            </details>
            <ClearDevice />
        </section>
    }
}
