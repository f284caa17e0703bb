//! Time that passes while the page looks on: the clock runs, a bar fills, and it can be stopped.

use gloo::timers::callback::Timeout;
use quantity::Seconds;
use yew::prelude::*;

use crate::said::use_voice;
use crate::store::{Msg, Ongoing, use_steady};
use crate::units;

/// Longest turn before the page gets its own, in milliseconds.
const TURN_MS: f64 = 8.0;

/// What is waited for.
#[derive(Properties, PartialEq)]
pub struct Props {
    /// The wait.
    pub ongoing: Ongoing,
    /// When the job began.
    pub starts: Seconds,
}

/// The clock, the bar and the button.
#[component]
pub fn Passing(props: &Props) -> Html {
    let voice = use_voice();
    let changes = use_steady().changes;
    let ongoing = &props.ongoing;
    let turns = use_state(|| 0_u32);
    {
        let ongoing = ongoing.clone();
        use_effect_with((*turns, ongoing.clone()), move |_| {
            let turn = Timeout::new(0, move || {
                let until = js_sys::Date::now() + TURN_MS;
                match ongoing.go_on(|| js_sys::Date::now() < until) {
                    Some(session) => changes.dispatch(Msg::Waited(session.into())),
                    None => turns.set(turns.wrapping_add(1)),
                }
            });
            move || drop(turn)
        });
    }
    let Some((clock, share)) = ongoing.seen() else { return html! {} };
    let stopped = ongoing.clone();
    let onclick = Callback::from(move |_: MouseEvent| stopped.stop());
    html! {
        <>
            <time aria-hidden="true">{ units::clock(props.starts + Seconds(clock)) }</time>
            <progress aria-label={voice.text("page-waiting")} value={share.to_string()}></progress>
            <button type="button" data-act="stop" {onclick}>{ voice.text("page-stop") }</button>
        </>
    }
}
