//! One attempt stepped through.

use std::rc::Rc;

use drill::Attempt;
use yew::prelude::*;

use crate::debrief::{SheetView, use_sheet};
use crate::said::use_voice;

/// The attempt.
#[derive(Properties, PartialEq)]
pub struct Props {
    /// The attempt.
    pub attempt: Rc<Attempt>,
    /// Told to go back.
    pub onback: Callback<()>,
}

/// The debrief as the learner reads it, under the learner's name.
#[component]
pub fn Review(props: &Props) -> Html {
    let voice = use_voice();
    let learner = match props.attempt.learner.as_str() {
        "" => voice.text("instructor-no-name"),
        name => name.to_owned(),
    };
    let back = props.onback.reform(|_: MouseEvent| ());
    let reading = use_sheet(props.attempt.clone(), None);
    let body = reading.show(&voice, |sheet| html! { <SheetView {sheet} /> });
    html! {
        <div class="review">
            <div class="row review-head">
                <button type="button" onclick={back} data-act="back">{ voice.text("instructor-back") }</button>
                <h1>{ voice.filled("instructor-review", &[("learner", learner.into())]) }</h1>
            </div>
            { body }
        </div>
    }
}
