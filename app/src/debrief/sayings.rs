//! Common sayings of the trade that this job acted on, and what is true instead.

use std::rc::Rc;

use words::Voice;
use yew::prelude::*;

use super::sheet::{Saying, Sheet};
use crate::glossary::Marked;
use crate::said::use_voice;

/// The job.
#[derive(Properties, PartialEq)]
pub struct Props {
    /// The job.
    pub sheet: Rc<Sheet>,
    /// Told a step that a saying led to.
    pub onstep: Callback<u32>,
}

/// A note for each; nothing where there is none.
#[component]
pub fn Sayings(props: &Props) -> Html {
    let voice = use_voice();
    html! { { for props.sheet.sayings.iter().map(|one| saying(props, &voice, one)) } }
}

fn saying(props: &Props, voice: &Voice, one: &Saying) -> Html {
    let onclick = {
        let (told, step) = (props.onstep.clone(), one.step);
        Callback::from(move |_: MouseEvent| told.emit(step))
    };
    html! {
        <aside class="saying">
            <h2>{ voice.text("debrief-saying-title") }</h2>
            <p class="said">{ voice.filled("debrief-saying-said", &[("said", one.said.clone().into())]) }</p>
            <p><Marked text={one.truth.clone()} /></p>
            if one.step > 0 {
                <button type="button" {onclick}>
                    { voice.filled("debrief-saying-step", &[("step", one.step.into())]) }
                </button>
            }
        </aside>
    }
}
