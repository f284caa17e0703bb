//! What a room sees: the heater in section, large figures, the live path, and the job so far as plots.

use std::rc::Rc;

use drill::Attempt;
use yew::prelude::*;

use super::film::use_film;
use crate::debrief::drawing::Drawing;
use crate::debrief::figures::{heads, values};
use crate::debrief::ladder::LadderView;
use crate::debrief::section::Section;
use crate::debrief::sheet::Sheet;
use crate::said::{Speech, use_speech, use_voice};
use crate::store::{Running, World};

/// The job.
#[derive(Properties, PartialEq)]
pub struct Props {
    /// The job.
    pub running: Running,
}

/// The inside.
#[component]
pub fn Inside(props: &Props) -> Html {
    let voice = use_voice();
    let running = &props.running;
    let (session, picture) = use_film(&running.session);
    let attempt = use_memo(running.drill.order.clone(), |order| Attempt::new("", order.clone()));
    let at = picture.samples.len().saturating_sub(1);
    let sheet = Rc::new(sheet(running, &session, (&attempt, &picture), use_speech()));
    let Some(now) = picture.samples.last() else { return html! {} };
    let live = if now.live { "show-live" } else { "show-dead" };
    let cells = heads(&voice, &sheet).into_iter().zip(values(&voice, &sheet, now));
    html! {
        <>
            <div class="show-section">
                <p class={classes!("show-state", now.live.then_some("live"))}>{ voice.text(live) }</p>
                <Section sheet={sheet.clone()} {at} />
            </div>
            <div class="show-path">
                <dl class="show-figures" aria-label={voice.text("show-figures")}>
                    { for cells.map(|(head, value)| html! { <div><dt>{ head }</dt><dd>{ value }</dd></div> }) }
                </dl>
                <LadderView sheet={sheet.clone()} {at} told={at} />
            </div>
            <div class="show-film">
                <Drawing {sheet} {at} step={now.step} onstep={Callback::noop()} />
            </div>
        </>
    }
}

/// The job as the debrief's drawings take it, with nothing judged.
fn sheet(
    running: &Running,
    session: &World,
    (attempt, picture): (&Rc<Attempt>, &Rc<drill::debrief::Picture>),
    speech: Speech,
) -> Sheet {
    Sheet {
        attempt: attempt.clone(),
        session: session.clone(),
        picture: (**picture).clone(),
        starts_at: session.job.starts_at,
        steps: Vec::new(),
        stretches: Vec::new(),
        accounts: Vec::new(),
        sayings: Vec::new(),
        verdict: Default::default(),
        fault: running.drill.fault.id,
        second: None,
        speech,
    }
}
