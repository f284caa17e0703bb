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
use crate::shell::use_frames;
use crate::store::World;
use crate::text;

/// What is behind the covers comes frame by frame: parts and wires, then the points, which are as many as all the rest.
const LAYERS: usize = 2;

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
    let drawn = use_frames(if open { LAYERS } else { 0 });
    html! {
        <svg
            class={classes!("detail", (open && drawn < LAYERS).then_some("filling"))}
            viewBox={format!("0 0 {} {}", SIZE.0, SIZE.1)}
            role="group"
            aria-label={text::detail(*place)}
        >
            <rect width="340" height="330" class="sheet-ground" />
            if *place == Place::LoadCenter {
                <Breakers session={session.clone()} known={known.clone()} {open} />
            }
            if open && drawn > 0 {
                { bodies(session, *place, known, shown) }
                <Wires session={session.clone()} known={known.clone()} place={*place} />
            }
            if open && drawn == LAYERS {
                <Points session={session.clone()} known={known.clone()} place={*place} />
                <Probes place={*place} session={session.clone()} />
            }
            { covers(session, *place) }
        </svg>
    }
}
