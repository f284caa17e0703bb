//! Every act in a list, each a button.

use std::rc::Rc;

use yew::prelude::*;

use super::drawing::clock;
use super::sheet::{Sheet, Step};
use crate::said::use_voice;
use crate::shell::use_frames;

/// Rows drawn with each frame.
const A_FRAME: usize = 12;

/// The job and the chosen step.
#[derive(Properties, PartialEq)]
pub struct Props {
    /// The job.
    pub sheet: Rc<Sheet>,
    /// The step.
    pub step: u32,
    /// Told another step.
    pub onstep: Callback<u32>,
}

/// The list.
#[component]
pub fn Steps(props: &Props) -> Html {
    let voice = use_voice();
    let steps = &props.sheet.steps;
    // A long list takes long to be laid out.
    let there = A_FRAME * use_frames(steps.len().div_ceil(A_FRAME));
    html! {
        <section class={classes!("steps", (there < steps.len()).then_some("filling"))}>
            <h2>{ voice.text("debrief-steps") }</h2>
            <ol>{ for steps.iter().take(there).map(|step| row(props, step)) }</ol>
        </section>
    }
}

fn row(props: &Props, step: &Step) -> Html {
    let onclick = {
        let (told, number) = (props.onstep.clone(), step.number);
        Callback::from(move |_| told.emit(number))
    };
    let chosen = step.number == props.step;
    let class = classes!("step-row", step.grave.then_some("grave"));
    let said = [&step.reading].into_iter().chain(&step.showed).filter(|text| !text.is_empty());
    let said: Vec<&str> = said.map(String::as_str).collect();
    html! {
        <li key={step.number}>
            <button type="button" {class} aria-current={chosen.then_some("step")} {onclick}>
                <time>{ clock(&props.sheet, step.at) }</time>
                <span>
                    if step.marked {
                        <b class="letter">{ &step.letter }</b>{ " " }
                    }
                    { &step.what }
                    if !said.is_empty() {
                        { " " }<b>{ said.join(" ") }</b>
                    }
                    { for step.harms.iter().map(|one| html! { <em class="harm">{ one }</em> }) }
                </span>
            </button>
        </li>
    }
}
