//! Time that passes while the page looks on: the clock runs, a bar fills, and it can be stopped.

use quantity::Seconds;
use words::Voice;
use yew::prelude::*;

use crate::said::use_voice;
use crate::store::{Msg, Ongoing, use_steady};
use crate::turns::Turns;
use crate::units;

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
    let turns = use_force_update();
    use_effect_with(ongoing.clone(), move |ongoing| {
        let ongoing = ongoing.clone();
        let passing = Turns::after(0, move |turn| match ongoing.go_on(|| turn.has_time()) {
            Some(session) => {
                changes.dispatch(Msg::Waited(session.into()));
                false
            }
            None => {
                turns.force_update();
                true
            }
        });
        move || drop(passing)
    });
    bar(&voice, ongoing, props.starts)
}

/// How far the wait is.
pub fn bar(voice: &Voice, ongoing: &Ongoing, starts: Seconds) -> Html {
    let Some((clock, share)) = ongoing.seen() else { return html! {} };
    let stopped = ongoing.clone();
    let onclick = Callback::from(move |_: MouseEvent| stopped.stop());
    html! {
        <>
            <time aria-hidden="true">{ units::clock(starts + Seconds(clock)) }</time>
            <progress aria-label={voice.text("page-waiting")} value={share.to_string()}></progress>
            <button type="button" data-act="stop" {onclick}>{ voice.text("page-stop") }</button>
        </>
    }
}
