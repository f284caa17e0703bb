//! The meter's leads where they touch, and the hand where it was put last.

use bench::{Action, Clamped, Session, Shown, Touchable};
use plant::{Place, Point, Wire};
use yew::prelude::*;

use super::layout::{At, spot};
use super::path::drawn;
use crate::store::{Lead, Setting, World, use_work};

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
        Point::End(end) => drawn(place, &session.home.plant.wiring, &session.lost())
            .into_iter()
            .flat_map(|(_, drawn)| drawn.ends)
            .find(|one| one.end == end)
            .map(|one| one.at),
    }
}

/// A hand with its finger on a point, from below or, near the lower edge, from above.
const HAND: &str = "M0 0q5-8 11-1l10 21q15-3 24 9q7 12 5 27l3 18h-31l-8-17q-14-7-17-19q4-7 12-1l5 5-15-39Z";

/// The point that the last act put a hand on, if it was one.
fn touched(session: &Session) -> Option<Point> {
    let last = session.log.last()?;
    let Action::Touch { at: Touchable::Metal { point } } = last.action else { return None };
    let done = !matches!(last.outcome.shown, Shown::Refused { .. } | Shown::Stopped { .. });
    done.then_some(point)
}

/// The hand, bare or in its glove.
fn hand(session: &Session, place: Place) -> Option<Html> {
    let (x, y) = find(session, place, touched(session)?)?;
    let (across, down) = (if x > 250.0 { -1 } else { 1 }, if y > 240.0 { -1 } else { 1 });
    let class = if session.me.gloves { "hand gloved" } else { "hand" };
    Some(html! { <path {class} d={HAND} transform={format!("translate({x} {y}) scale({across} {down})")} /> })
}

/// Below this a point has its name under it or beside it, and a lead comes from above.
const LOW: f64 = 220.0;

/// A lead's tip and what is seen of its cable: the red one round, the black one square, so that no colour is needed.
pub fn tip(lead: Lead, (x, y): At, (across, down): At, r: f64) -> Html {
    let (class, round) = match lead {
        Lead::Red => ("lead red-lead", r),
        Lead::Black => ("lead black-lead", 0.0),
    };
    let side = (2.0 * r).to_string();
    html! {
        <g {class}>
            <path d={format!("M{x} {y}l{across} {down}")} />
            <rect x={(x - r).to_string()} y={(y - r).to_string()} width={side.clone()} height={side} rx={round.to_string()} />
        </g>
    }
}

/// The jaws of the clamp around a wire.
fn jaws(session: &Session, place: Place, wire: Wire) -> Option<Html> {
    let all = drawn(place, &session.home.plant.wiring, &session.lost());
    let (x, y) = all.into_iter().find(|(strand, _)| strand.wire == wire)?.1.middle?;
    Some(html! { <path class="ink" d={format!("M{} {}a14 14 0 1 0 10 0", x - 5.0, y - 13.0)} /> })
}

/// The leads, the clamp and the hand.
#[component]
pub fn Probes(props: &Props) -> Html {
    let desk = &use_work().desk;
    let lead = |lead: Lead, point: Option<Point>| {
        let (x, y) = find(&props.session, props.place, point?)?;
        let across = if lead == Lead::Red { -44.0 } else { 44.0 };
        let down = if y > LOW { -52.0 } else { 52.0 };
        Some(tip(lead, (x, y), (across, down), 16.0))
    };
    let around = match desk.clamped.filter(|_| desk.setting == Setting::Clamp) {
        Some(Clamped::Wire { wire }) => [Some(wire), None],
        Some(Clamped::Pair { first, second }) => [Some(first), Some(second)],
        _ => [None, None],
    };
    html! {
        <g aria-hidden="true" class="leads">
            { lead(Lead::Red, desk.red) }
            { lead(Lead::Black, desk.black) }
            { for around.into_iter().flatten().filter_map(|wire| jaws(&props.session, props.place, wire)) }
            { hand(&props.session, props.place) }
        </g>
    }
}
