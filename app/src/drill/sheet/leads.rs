//! The meter's leads on the whole drawing: at which place each touches.

use bench::Session;
use plant::{Level, Place, Point, Screw};
use yew::prelude::*;

use super::frame::Frame;
use crate::drill::detail::{bare, tip};
use crate::store::{Lead, World, use_work};

/// The world.
#[derive(Properties, PartialEq)]
pub struct Props {
    /// The world.
    pub session: World,
}

/// The place at which a point is touched: bare metal of the tank in an open compartment, that of the other lead first.
fn touched(session: &Session, point: Point, other: Option<Point>) -> Place {
    let (upper, lower) = (Place::UpperCompartment, Place::LowerCompartment);
    let near = other.map(Point::place).filter(|place| *place == lower).unwrap_or(upper);
    let open = [near, upper, lower].into_iter().find(|place| bare(session, *place));
    open.filter(|_| point == Screw::Shell.into()).unwrap_or_else(|| point.place())
}

/// Where a lead's tip lies on a point at a place, and how far its cable is seen.
fn lies(session: &Session, lead: Lead, point: Point, place: Place) -> Option<((f64, f64), (f64, f64))> {
    let frame = Frame::of(&session.home.plant.plate);
    let red = lead == Lead::Red;
    // Inside the heater a cable leaves to its own side; at the wall both leave towards the heater.
    let (left, down) = (if red { -30.0 } else { 30.0 }, 24.0);
    let inside = |x: f64, y: f64| ((if red { 248.0 - x } else { 248.0 + x }, y), (left, down));
    let wall = |x: f64, y: f64, apart: f64| ((x, if red { y } else { y + apart }), (28.0, down));
    match place {
        Place::LoadCenter => Some(wall(110.0, 240.0, 92.0)),
        Place::InLineBox => Some(wall(120.0, 112.0, 22.0)),
        Place::JunctionBox => Some(inside(13.0, frame.top - 12.0)),
        Place::UpperCompartment => Some(inside(27.0, frame.cover_top(Level::Upper) + 14.0)),
        Place::LowerCompartment => Some(inside(27.0, frame.cover_top(Level::Lower) + 14.0)),
        Place::HeaterTop if point == Screw::Pipe.into() => Some(((216.0, frame.top - 50.0), (-30.0, down))),
        Place::HeaterTop => Some(inside(40.0, frame.top + 12.0)),
        _ => None,
    }
}

/// Both leads, where they are.
#[component]
pub fn Leads(props: &Props) -> Html {
    let desk = &use_work().desk;
    let session = &props.session;
    let one = |lead: Lead, at: Option<Point>, other: Option<Point>| {
        let place = touched(session, at?, other);
        let (at, to) = lies(session, lead, at?, place).filter(|_| bare(session, place))?;
        Some(tip(lead, at, to, 6.0))
    };
    html! { <g aria-hidden="true" class="leads far">{ one(Lead::Red, desk.red, desk.black) }{ one(Lead::Black, desk.black, desk.red) }</g> }
}
