//! A detail: the parts, the wires, the points, the leads, and the covers that are still on.

use std::rc::Rc;

use bench::Session;
use plant::Place;
use yew::prelude::*;

use super::covers::{bare, covers};
use super::layout::{SIZE, level};
use super::panel::Breakers;
use super::points::Points;
use super::probes::Probes;
use super::wires::Wires;
use crate::drill::known::Known;
use crate::store::use_work;
use crate::text;
use crate::units::Units;

/// The world, what is known of it, and the place.
#[derive(Properties, PartialEq)]
pub struct Props {
    /// The world.
    pub session: Rc<Session>,
    /// What was perceived.
    pub known: Rc<Known>,
    /// Where.
    pub place: Place,
}

/// The detail.
#[component]
pub fn Detail(props: &Props) -> Html {
    let Props { session, known, place } = props;
    let shown = use_work().desk.units;
    let open = bare(session, *place);
    html! {
        <svg
            class="detail"
            viewBox={format!("0 0 {} {}", SIZE.0, SIZE.1)}
            role="group"
            aria-label={text::detail(*place)}
        >
            <rect width="340" height="330" class="sheet-ground" />
            if *place == Place::LoadCenter {
                <Breakers session={session.clone()} known={known.clone()} {open} />
            }
            if open {
                { parts(*place, known, shown) }
                <Wires session={session.clone()} known={known.clone()} place={*place} />
                <Points session={session.clone()} place={*place} />
                <Probes place={*place} session={session.clone()} />
            }
            { covers(session, *place) }
        </svg>
    }
}

/// The bodies that the screws sit on.
fn parts(place: Place, known: &Known, shown: Units) -> Html {
    let dial = level(place).and_then(|level| known.dial(level));
    let said = dial.map(|t| shown.words().temperature(t)).unwrap_or_default();
    let proud = known.button == Some(true);
    match place {
        Place::UpperCompartment => html! {
            <g>
                <rect x="52" y="30" width="236" height="92" class="part" />
                <circle cx="170" cy="76" r={if proud { "20" } else { "16" }} class="reset" />
                <path d="M162 76h16" class="mark" />
                <rect x="52" y="146" width="236" height="84" class="card" />
                <circle cx="170" cy="168" r="16" class="dial" />
                <text x="194" y="166" class="sub">{ said }</text>
            </g>
        },
        Place::LowerCompartment => html! {
            <g>
                <rect x="52" y="46" width="236" height="100" class="card" />
                <circle cx="170" cy="86" r="22" class="dial" />
                <text x="170" y="128" class="sub middle">{ said }</text>
                <circle cx="170" cy="250" r="76" class="flange" />
            </g>
        },
        Place::JunctionBox => html! { <rect x="30" y="44" width="280" height="232" class="part" /> },
        Place::HeaterTop => html! {
            <g>
                <path d="M104 0V200" class="cold" />
                <path d="M276 0V200" class="hot" />
                <path d="M20 330V236Q20 200 170 200Q320 200 320 236V330Z" class="card" />
            </g>
        },
        _ => html! {
            <g>
                <path d="M46 44V262M102 44V262" class="bus" />
                <path d="M34 294H60M88 294H160" class="bus" />
            </g>
        },
    }
}
