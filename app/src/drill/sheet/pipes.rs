//! The pipes with the cold valve, the relief valve and the drain.

use bench::view::View;
use plant::Place;
use yew::prelude::*;

use super::Spot;
use crate::text;

/// What is in sight.
#[derive(Properties, PartialEq)]
pub struct Props {
    /// Handles, levers and running water are in plain view.
    pub view: View,
    /// An expansion tank was seen, or seen to be missing.
    pub expansion: Option<bool>,
}

/// The pipes.
#[component]
pub fn Pipes(props: &Props) -> Html {
    let view = &props.view;
    html! {
        <>
            <path class="conduit" d="M106 196V88H248V106" />
            <path class="cold" d="M216 140V56H150V10" />
            <path class="hot" d="M280 140V56H346V10" />
            <path class="hot branch" d="M346 56H452V484H444" />
            <text x="358" y="26" class="lab">{ text::HOT_PIPE[0] }</text>
            <text x="358" y="41" class="sub">{ text::HOT_PIPE[1] }</text>
            <Spot place={Place::HeaterTop} area={(40.0, 22.0, 170.0, 62.0)}>
                <text x="136" y="44" class="lab end">{ text::COLD_VALVE }</text>
                <text x="136" y="60" class="sub end">{ text::opening(view.cold_valve) }</text>
                { valve(184.0, 56.0, view.cold_valve) }
                if props.expansion == Some(true) {
                    <path class="ink" d="M150 30h-12" />
                    <rect x="112" y="16" width="26" height="14" rx="7" class="card" />
                }
            </Spot>
            { relief(view) }
            { drain(view) }
        </>
    }
}

fn relief(view: &View) -> Html {
    let lever = if view.lever { "M335 184L352 160" } else { "M335 184V168H358" };
    html! {
        <Spot place={Place::Relief} area={(316.0, 156.0, 134.0, 56.0)}>
            <path class="conduit" d="M348 196h12V604" />
            if view.relief_runs {
                <path class="running" d="M360 590V612" />
            }
            <rect x="322" y="184" width="26" height="22" class="card" />
            <path class="ink" d={lever} />
            <text x="370" y="180" class="lab">{ text::place(Place::Relief) }</text>
            <text x="370" y="196" class="sub">{ text::relief(view) }</text>
        </Spot>
    }
}

fn drain(view: &View) -> Html {
    html! {
        <Spot place={Place::Drain} area={(310.0, 560.0, 110.0, 52.0)}>
            <path class="conduit" d="M318 584h28v12" />
            if view.hose {
                <path class="hose" d="M346 596q2 14 20 14h90" />
            }
            if view.drain_flow.get() > 0.0 && !view.hose {
                <path class="running" d="M346 596V612" />
            }
            { valve(332.0, 584.0, view.drain_valve) }
            <text x="370" y="576" class="lab">{ text::DRAIN_SHORT }</text>
            <text x="370" y="591" class="sub">{ text::drain(view) }</text>
            <text x="370" y="605" class="sub">{ text::hose(view) }</text>
        </Spot>
    }
}

/// A valve with its handle: along the pipe when open, across it when shut.
fn valve(x: f64, y: f64, opening: f64) -> Html {
    let turn = format!("rotate({:.0} {x} {y})", 90.0 * (1.0 - opening.clamp(0.0, 1.0)));
    html! {
        <g>
            <circle cx={x.to_string()} cy={y.to_string()} r="13" class="card" />
            <line
                class="lever"
                transform={turn}
                x1={(x - 15.0).to_string()}
                y1={y.to_string()}
                x2={(x + 15.0).to_string()}
                y2={y.to_string()}
            />
        </g>
    }
}
