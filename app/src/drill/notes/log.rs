//! The job log: each step with its time and what it showed, and a box to tick it as evidence.

use std::rc::Rc;

use bench::{Entry, Shown};
use gloo::timers::callback::Timeout;
use plant::Layout;
use yew::prelude::*;

use super::take_back::TakeBack;
use crate::said::use_language;
use crate::store::{Msg, World, use_work};
use crate::units::{self, Units};
use crate::{shell, text};

/// The world.
#[derive(Properties, PartialEq)]
pub struct Props {
    /// The world.
    pub session: World,
}

/// The log, the newest step in view when it is written and when the log is turned to.
#[component]
pub fn Log(props: &Props) -> Html {
    let work = use_work();
    let list = use_node_ref();
    let log = &props.session.log;
    {
        let list = list.clone();
        use_effect_with((log.len(), work.desk.tab), move |_| {
            // In a turn of its own: it asks for the layout of what was just drawn, and the frame is left to paint it.
            let turn = Timeout::new(0, move || {
                if let Some(list) = list.cast::<web_sys::Element>() {
                    list.set_scroll_top(list.scroll_height());
                }
            });
            move || drop(turn)
        });
    }
    let starts = props.session.job.starts_at;
    let layout = props.session.home.plant.wiring.layout;
    let tick = use_callback(work.dispatcher(), |step, work| work.dispatch(Msg::Tick(step)));
    let rows = log.iter().enumerate().map(|(at, entry)| {
        let step = at as u32 + 1;
        html! {
            <Step
                key={step}
                {step}
                entry={entry.clone()}
                // Written down when it is done, as the clock then shows.
                clock={units::clock(starts + entry.at + entry.outcome.took)}
                ticked={work.desk.ticks.contains(&step)}
                units={work.desk.units}
                {layout}
                tick={tick.clone()}
            />
        }
    });
    html! {
        <section class="log-part" aria-label={text::LOG}>
            <h2>{ text::LOG }</h2>
            if log.is_empty() {
                <p class="sub">{ text::NOTHING_YET }</p>
            }
            <ol class="log" ref={list} tabindex="0" aria-label={text::LOG}>{ for rows }</ol>
            <TakeBack session={props.session.clone()} />
        </section>
    }
}

#[derive(Properties, PartialEq)]
struct StepProps {
    step: u32,
    entry: Rc<Entry>,
    clock: String,
    ticked: bool,
    units: Units,
    layout: Layout,
    tick: Callback<u32>,
}

#[component]
fn Step(props: &StepProps) -> Html {
    use_language();
    let entry = &props.entry;
    let onchange = {
        let (tick, step) = (props.tick.clone(), props.step);
        Callback::from(move |_: Event| tick.emit(step))
    };
    let shown = text::shown(entry, props.units, props.layout);
    let more = text::aftermath(entry, props.units);
    html! {
        <li class={classes!(shell::tone(entry))}>
            <time>{ &props.clock }</time>
            <span>
                { text::fit(text::act(entry, props.units), props.layout) }{ " " }
                if !shown.is_empty() {
                    <b class={if is_reading(entry) { "read" } else { "told" }}>{ shown }</b>
                }
                if !more.is_empty() {
                    <em>{ " " }{ more }</em>
                }
            </span>
            <label class="tick">
                <input type="checkbox" checked={props.ticked} {onchange} data-step={props.step.to_string()} />
                <span class="unseen">{ text::evidence(props.step) }</span>
            </label>
        </li>
    }
}

/// A number from an instrument, rather than something seen or said.
fn is_reading(entry: &Entry) -> bool {
    matches!(
        entry.outcome.shown,
        Shown::Meter { .. }
            | Shown::Clamp { .. }
            | Shown::Temperature { .. }
            | Shown::Pressure { .. }
            | Shown::Charge { .. }
    )
}
