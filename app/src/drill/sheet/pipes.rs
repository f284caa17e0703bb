//! The pipes with the cold valve, the relief valve and the drain.

use std::rc::Rc;

use bench::Fitting;
use bench::view::View;
use plant::{Place, Recirculation};
use yew::prelude::*;

use super::Spot;
use super::found::{discharge, drop, return_loop, unions};
use super::frame::Frame;
use crate::drill::known::Known;
use crate::said::use_language;
use crate::text;

/// What is in sight.
#[derive(Properties, PartialEq)]
pub struct Props {
    /// Handles, levers and running water are in plain view.
    pub view: View,
    /// The heater's outline.
    pub frame: Frame,
    /// What was perceived.
    pub known: Rc<Known>,
    /// A second circuit comes in a conduit of its own.
    pub second_circuit: bool,
    /// The return loop, drawn once it was seen.
    pub recirculation: Option<Recirculation>,
}

/// The pipes.
#[component]
pub fn Pipes(props: &Props) -> Html {
    use_language();
    let Props { view, frame, known, second_circuit, recirculation } = props;
    let found = &known.found;
    let (lid, shoulder) = (frame.top - 24.0, frame.top + 4.0);
    let (piped, stands) = (view.stand.is_piped(), view.stand.is_there());
    // Undone, the pipes end above the nipples.
    let end = if piped { shoulder } else { shoulder - PARTED };
    html! {
        <>
            <path class="conduit" d={format!("M109 196V88H248V{lid}")} />
            if *second_circuit {
                // Inside the first one's bend, clear of the words over the load center.
                <path class="conduit" d={format!("M117 196V97H239V{lid}")} />
            }
            <path class="cold" d={format!("M216 {end}V56H150V16H4")} />
            <path class="hot" d={format!("M280 {end}V56H346V10")} />
            <path class="hot branch" d="M346 56H461V484H444" />
            if stands && !piped {
                <path class="ink" d={format!("M216 {shoulder}v-14M280 {shoulder}v-14")} />
            }
            if let Some(dielectric) = found.dielectric.filter(|_| piped) {
                { unions(dielectric, shoulder) }
            }
            if let Some((runs, is)) = found.pump.zip(recirculation.as_ref()) {
                { return_loop(runs, is, frame) }
            }
            <text x="358" y="26" class="lab">{ text::HOT_PIPE[0] }</text>
            <text x="358" y="41" class="sub">{ text::HOT_PIPE[1] }</text>
            <Spot place={Place::HeaterTop} area={(40.0, 30.0, 170.0, 56.0)}>
                <text x="136" y="60" class="lab end">{ text::COLD_VALVE }</text>
                <text x="136" y="74" class="sub end">{ text::opening(view.cold_valve) }</text>
                { valve(184.0, 56.0, 13.0, view.cold_valve) }
                if known.expansion == Some(true) {
                    <path class="ink" d="M150 28h12" />
                    <rect x="162" y="21" width="26" height="14" rx="7" class="card" />
                }
            </Spot>
            { for [216.0, 280.0].map(|x| drop(known, Fitting::Nipples, x, shoulder - 6.0)) }
            if stands {
                { relief(view, frame, known) }
                { drain(view, frame.right(), known) }
            }
        </>
    }
}

/// From the nipples up to the ends of pipes that are undone.
const PARTED: f64 = 34.0;
/// The highest place for the relief valve's words: the taps lie below.
pub const RELIEF_WORDS: f64 = 372.0;
/// From the relief valve's body to the middle of its pipe.
const DISCHARGE: f64 = 36.0;

fn relief(view: &View, frame: &Frame, known: &Known) -> Html {
    let (x, y) = (frame.right() - 4.0, frame.relief());
    let lever =
        if view.lever { format!("M{} {y}l17 -24", x + 13.0) } else { format!("M{} {y}v-14h23", x + 13.0) };
    let words = y.min(RELIEF_WORDS);
    // Between its own pipe and the hot one, wide as the tank may be.
    let beside = (x + DISCHARGE + 6.0).to_string();
    let top = words - 30.0;
    html! {
        <Spot place={Place::Relief} area={(x - 6.0, top, 457.0 - x, y + 26.0 - top)}>
            if view.relief_there {
                { valve_body(view, (x, y), &lever, known) }
            } else {
                <circle cx={(x + 8.0).to_string()} cy={(y + 11.0).to_string()} r="7" class="card" />
            }
            if words < y {
                <path class="ink thin" d={format!("M{} {}L{} {}", x + DISCHARGE + 3.0, words + 2.0, x + 28.0, y - 18.0)} />
            }
            <text x={beside.clone()} y={(words - 4.0).to_string()} class="lab">{ text::RELIEF_SHORT }</text>
            <text x={beside} y={(words + 12.0).to_string()} class="sub">{ text::relief(view) }</text>
        </Spot>
    }
}

/// The valve in its port, with its pipe.
fn valve_body(view: &View, (x, y): (f64, f64), lever: &str, known: &Known) -> Html {
    html! {
        <>
            { discharge(&known.found, x + 26.0, y + 12.0) }
            if view.relief_runs {
                <path class="running" d={format!("M{} 590V612", x + 36.0)} />
            }
            <rect x={x.to_string()} y={y.to_string()} width="26" height="22" class="card" />
            <path class="ink" d={lever.to_owned()} />
            { drop(known, Fitting::ReliefValve, x + 8.0, y + 20.0) }
        </>
    }
}

fn drain(view: &View, right: f64, known: &Known) -> Html {
    let x = right + 6.0;
    html! {
        <Spot place={Place::Drain} area={(x - 22.0, 556.0, 442.0 - x, 57.0)}>
            <path class="conduit" d={format!("M{} 584h28v12", x - 14.0)} />
            if view.hose {
                <path class="hose" d={format!("M{} 596q2 14 20 14h90", x + 14.0)} />
            }
            if view.drain_flow.get() > 0.0 {
                // From the end of the hose, or to the floor.
                <path class="running" d={if view.hose { format!("M{} 610h16", x + 124.0) } else { format!("M{} 596V612", x + 14.0) }} />
            }
            { valve(x, 584.0, 13.0, view.drain_valve) }
            { drop(known, Fitting::DrainValve, x, 597.0) }
            <text x="374" y="576" class="lab">{ text::DRAIN_SHORT }</text>
            <text x="374" y="591" class="sub">{ text::drain(view) }</text>
            <text x="374" y="605" class="sub">{ text::hose(view) }</text>
        </Spot>
    }
}

/// A valve with its handle: along the pipe when open, across it when shut.
pub fn valve(x: f64, y: f64, radius: f64, opening: f64) -> Html {
    let turn = format!("rotate({:.0} {x} {y})", 90.0 * (1.0 - opening.clamp(0.0, 1.0)));
    html! {
        <g>
            <circle cx={x.to_string()} cy={y.to_string()} r={radius.to_string()} class="card" />
            <line
                class="lever"
                transform={turn}
                x1={(x - radius - 2.0).to_string()}
                y1={y.to_string()}
                x2={(x + radius + 2.0).to_string()}
                y2={y.to_string()}
            />
        </g>
    }
}
