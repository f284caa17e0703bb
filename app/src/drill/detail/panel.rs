//! The breakers of the load center, close: what they are labelled, how their handles were last seen.

use std::rc::Rc;

use plant::{Breaker, Circuit, Handle, Place, Screw};
use yew::prelude::*;

use super::layout::spot;
use crate::drill::known::Known;
use crate::said::use_language;
use crate::store::World;
use crate::text;

/// The world and what is known of it.
#[derive(Properties, PartialEq)]
pub struct Props {
    /// The world.
    pub session: World,
    /// What was perceived.
    pub known: Rc<Known>,
    /// The front is off: the breakers move aside for bus and screws.
    pub open: bool,
}

/// The breakers.
#[component]
pub fn Breakers(props: &Props) -> Html {
    use_language();
    let breakers = &props.session.home.plant.panel.breakers;
    let pitch = 240.0 / breakers.len().max(1) as f64;
    let rows = breakers.iter().enumerate().map(|(at, breaker)| {
        let slot = at as u32;
        let y = 30.0 + pitch * at as f64;
        row(props, slot, y, pitch, text::slot(slot, props.known.labels.get(at).copied()), breaker)
    });
    html! {
        <g>
            if !props.open {
                <rect x="14" y="14" width="312" height="302" class="plate" />
            }
            { for rows }
        </g>
    }
}

fn row(props: &Props, slot: u32, y: f64, pitch: f64, label: String, breaker: &Breaker) -> Html {
    let handle = props.known.handles.get(&slot).copied();
    let left = if props.open { 140.0 } else { 40.0 };
    let shift = match handle {
        Some(Handle::On) => 38.0,
        Some(Handle::Off) => 6.0,
        Some(Handle::Tripped) | None => 22.0,
    };
    let class = match handle {
        None => "handle unknown",
        Some(Handle::Tripped) => "handle tripped",
        Some(_) => "handle",
    };
    // The number stands where the handle does not.
    let number = if shift < 20.0 { 48.0 } else { 5.0 };
    let at = |dy: f64| (y + dy).to_string();
    let said = handle.map_or_else(|| text::NOT_LOOKED.to_string(), text::handle);
    // The poles of a two-pole breaker have one handle; the halves of a tandem have each their own, and no tie.
    let (tops, tall): (&[f64], f64) = match breaker.tandem {
        Some(_) => (&[8.0, pitch / 2.0 - 5.0], pitch / 2.0 - 17.0),
        None => (&[8.0], pitch - 30.0),
    };
    let handles = tops.iter().map(|top| {
        html! { <rect x={(left + shift).to_string()} y={at(*top)} width="20" height={tall.to_string()} {class} /> }
    });
    html! {
        <g>
            <rect x={left.to_string()} y={at(0.0)} width="64" height={(pitch - 14.0).to_string()} class="body" />
            { for handles }
            if breaker.locked {
                <rect x={(left - 14.0).to_string()} y={at(pitch - 44.0)} width="28" height="24" class="lock" />
            }
            if !props.open {
                <text x="122" y={at(24.0)} class="lab">{ label }</text>
                <text x="122" y={at(42.0)} class="sub">{ said }</text>
            } else {
                <text x={(left + number).to_string()} y={at(18.0)} class="sub on-ink">{ slot + 1 }</text>
                { links(props, slot, left + 64.0, y, pitch - 14.0) }
            }
        </g>
    }
}

/// Lines from a breaker's poles to its load screws, as they are seen with the front off.
fn links(props: &Props, slot: u32, x: f64, y: f64, height: f64) -> Html {
    let feeds = props.session.home.plant.panel.breakers.get(slot as usize).map(|one| one.feeds);
    let screws = match feeds {
        Some(Circuit::Heater) => [Screw::B1, Screw::B2],
        Some(Circuit::SecondSource | Circuit::OffPeak) => [Screw::S1, Screw::S2],
        _ => return html! {},
    };
    let lines = screws.into_iter().zip([0.3, 0.7]).filter_map(|(screw, part)| {
        let wiring = &props.session.home.plant.wiring;
        let to = spot(Place::LoadCenter, wiring.layout, screw).filter(|_| wiring.has_screw(screw))?;
        Some(format!("M{x} {:.0}L{} {}", y + part * height, to.0, to.1))
    });
    html! { <path class="ink thin" d={lines.collect::<String>()} /> }
}
