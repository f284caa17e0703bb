//! The wires of a detail, each in its colour.

use std::rc::Rc;

use plant::{Place, Wire, Wiring};
use yew::prelude::*;

use crate::store::World;

use super::layout::{Strand, wires};
use super::path::drawn;
use crate::drill::known::Known;

/// The world, what is known of it, and the place.
#[derive(Properties, PartialEq)]
pub struct Props {
    /// The world.
    pub session: World,
    /// What was perceived.
    pub known: Rc<Known>,
    /// Where.
    pub place: Place,
}

/// The colour of a wire: where the second conductor is a neutral its leads are white.
const fn colour(strand: &Strand, wiring: &Wiring) -> &'static str {
    match strand.wire {
        Wire::FeedB | Wire::UpperPermanent | Wire::LowerPermanent if wiring.hot_neutral => "white",
        _ => strand.class,
    }
}

/// The colour that a wire is seen to have at a place; none where its name says it, or where it is a bare strap.
pub fn colour_of(place: Place, wire: Wire, wiring: &Wiring) -> Option<&'static str> {
    let strand = wires(place, wiring.layout).iter().find(|strand| strand.wire == wire)?;
    Some(colour(strand, wiring)).filter(|_| !matches!(wire, Wire::Strap | Wire::CableB))
}

/// The wires.
#[component]
pub fn Wires(props: &Props) -> Html {
    let wiring = &props.session.home.plant.wiring;
    let drawn = drawn(props.place, wiring, &props.session.lost()).into_iter().map(|(strand, drawn)| {
        let charred = drawn.ends.iter().filter(|one| props.known.charred.contains(&one.end)).map(|one| {
            html! { <circle cx={one.at.0.to_string()} cy={one.at.1.to_string()} r="11" class="char" /> }
        });
        html! {
            <g key={strand.wire.name()}>
                <path d={drawn.d.clone()} class="wire edge" />
                <path d={drawn.d.clone()} class={classes!("wire", colour(strand, wiring))} />
                // A white that is no neutral bears the mark of it (NEC 200.7(C)(1)).
                if strand.wire == Wire::CableB {
                    <path d={drawn.d.clone()} class="wire marked" pathLength="100" />
                }
                { for charred }
            </g>
        }
    });
    html! { <g>{ for drawn }</g> }
}
