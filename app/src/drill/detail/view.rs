//! A detail: the parts, the wires, the points, the leads, and the covers that are still on.

use std::rc::Rc;

use plant::Place;
use yew::prelude::*;

use super::bodies::bodies;
use super::covers::{bare, covers};
use super::layout::SIZE;
use super::panel::Breakers;
use super::points::Points;
use super::probes::Probes;
use super::wires::Wires;
use crate::drill::known::Known;
use crate::said::use_units;
use crate::store::World;
use crate::text;

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

/// The detail.
#[component]
pub fn Detail(props: &Props) -> Html {
    let Props { session, known, place } = props;
    let shown = use_units();
    let open = bare(session, *place);
    html! {
        <svg
            class="detail"
            viewBox={format!("0 0 {} {}", SIZE.0, SIZE.1)}
            role="group"
            aria-label={text::detail(*place, session.home.plant.wiring.layout)}
        >
            <rect width="340" height="330" class="sheet-ground" />
            if *place == Place::LoadCenter {
                <Breakers session={session.clone()} known={known.clone()} {open} />
            }
            if open {
                { bodies(session, *place, known, shown) }
                <Wires session={session.clone()} known={known.clone()} place={*place} />
                <Points session={session.clone()} place={*place} />
                <Probes place={*place} session={session.clone()} />
            }
            { covers(session, *place) }
        </svg>
    }
}
