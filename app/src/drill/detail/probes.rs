//! The meter's leads where they touch.

use bench::Session;
use plant::{Place, Point};
use yew::prelude::*;

use super::layout::{At, spot, wires};
use super::path::draw;
use crate::store::{Lead, World, use_work};

/// The world and the place.
#[derive(Properties, PartialEq)]
pub struct Props {
    /// The world.
    pub session: World,
    /// Where.
    pub place: Place,
}

/// Where a point is in a detail.
fn find(session: &Session, place: Place, point: Point) -> Option<At> {
    let layout = session.home.plant.wiring.layout;
    match point {
        Point::Screw(screw) => spot(place, layout, screw),
        Point::End(end) => wires(place, layout)
            .iter()
            .filter(|strand| strand.wire == end.wire)
            .filter_map(|strand| draw(place, strand, &session.home.plant.wiring))
            .flat_map(|drawn| drawn.ends)
            .find(|one| one.end == end)
            .map(|one| one.at),
    }
}

/// The leads.
#[component]
pub fn Probes(props: &Props) -> Html {
    let desk = &use_work().desk;
    let lead = |lead: Lead, point: Option<Point>| {
        let (x, y) = find(&props.session, props.place, point?)?;
        let (class, to) = match lead {
            Lead::Red => ("lead red-lead", x - 44.0),
            Lead::Black => ("lead black-lead", x + 44.0),
        };
        Some(html! {
            <g {class}>
                <path d={format!("M{x} {y}L{to} {}", y + 52.0)} />
                <circle cx={x.to_string()} cy={y.to_string()} r="16" />
            </g>
        })
    };
    html! {
        <g aria-hidden="true" class="leads">
            { lead(Lead::Red, desk.red) }
            { lead(Lead::Black, desk.black) }
        </g>
    }
}
