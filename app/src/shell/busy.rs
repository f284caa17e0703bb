//! A line that says what is being computed, with a button that stops it.

use yew::prelude::*;

use crate::away;
use crate::said::use_voice;

/// What is under way.
#[derive(Properties, PartialEq)]
pub struct Props {
    /// What it says.
    pub said: AttrValue,
    /// How much of it is done, where that is known.
    #[prop_or_default]
    pub done: Option<f64>,
    /// Told when it was stopped.
    pub onstop: Callback<()>,
}

/// The line.
#[component]
pub fn Busy(props: &Props) -> Html {
    let voice = use_voice();
    let onclick = {
        let told = props.onstop.clone();
        Callback::from(move |_: MouseEvent| {
            away::stop();
            told.emit(());
        })
    };
    html! {
        <div class="busy">
            <p role="status">{ &props.said }</p>
            <progress aria-label={props.said.clone()} value={props.done.map(|done| done.to_string())}></progress>
            <button type="button" data-act="stop" {onclick}>{ voice.text("page-stop") }</button>
        </div>
    }
}
