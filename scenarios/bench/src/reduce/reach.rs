//! What stands in front of what: covers, and how far a wire reaches.

use plant::{Level, Place, Point, Screw};

use super::senses;
use crate::action::Cover;
use crate::session::Session;
use crate::shown::Refusal;

/// Covers in front of a cover, outermost first.
pub(super) const fn in_front(cover: Cover) -> &'static [Cover] {
    match cover {
        Cover::UpperInsulation => &[Cover::Upper],
        Cover::LowerInsulation => &[Cover::Lower],
        Cover::UpperShield => &[Cover::Upper, Cover::UpperInsulation],
        Cover::LowerShield => &[Cover::Lower, Cover::LowerInsulation],
        Cover::PanelFront | Cover::JunctionBox | Cover::BoxDoor | Cover::Upper | Cover::Lower => &[],
    }
}

/// A cover of a compartment. Load center and junction box stay open for measuring under power (trade sheet
/// 10.11: currents of the legs at the junction box), the compartments do not.
pub(super) const fn covers_controls(cover: Cover) -> bool {
    !matches!(cover, Cover::PanelFront | Cover::JunctionBox | Cover::BoxDoor)
}

/// Covers in front of the dial and the button, outermost first: the shield leaves them free.
const fn before_control(level: Level) -> &'static [Cover] {
    match level {
        Level::Upper => &[Cover::Upper, Cover::UpperInsulation],
        Level::Lower => &[Cover::Lower, Cover::LowerInsulation],
    }
}

/// Covers in front of the bare metal of a place, outermost first.
const fn before_metal(place: Place) -> &'static [Cover] {
    match place {
        Place::LoadCenter => &[Cover::PanelFront],
        Place::JunctionBox => &[Cover::JunctionBox],
        Place::InLineBox => &[Cover::BoxDoor],
        Place::UpperCompartment => Cover::over(Level::Upper),
        Place::LowerCompartment => Cover::over(Level::Lower),
        _ => &[],
    }
}

fn off(session: &Session, covers: &[Cover]) -> Result<(), Refusal> {
    match covers.iter().find(|cover| !session.access.off.contains(cover)) {
        Some(cover) => Err(Refusal::CoverOn { cover: *cover }),
        None => Ok(()),
    }
}

/// A point can be reached by a lead, a tool or a hand.
pub(super) fn point(session: &Session, point: Point) -> Result<(), Refusal> {
    if !senses::there(&session.home.plant, point) {
        return Err(Refusal::NotHere);
    }
    place(session, point.place())
}

/// The bare metal of a place can be reached.
pub(super) fn place(session: &Session, place: Place) -> Result<(), Refusal> {
    if !senses::place_there(&session.home.plant, place) {
        return Err(Refusal::NotHere);
    }
    off(session, before_metal(place))
}

/// A dial, a button or the bare shell beside a control can be reached.
pub(super) fn control(session: &Session, level: Level) -> Result<(), Refusal> {
    let plant = &session.home.plant;
    if !plant.plate.has(level) || !senses::place_there(plant, Place::UpperCompartment) {
        return Err(Refusal::NotHere);
    }
    off(session, before_control(level))
}

/// What is set for a level can be reached: its dial, or of a board, which carries the settings of both zones, the board
/// behind the upper cover.
pub(super) fn setting(session: &Session, level: Level) -> Result<(), Refusal> {
    let dials = session.home.plant.plate.layout.has_thermostats();
    control(session, if dials { level } else { Level::Upper })
}

/// A place can be seen into.
pub(super) fn sight(session: &Session, place: Place) -> Result<(), Refusal> {
    if !senses::place_there(&session.home.plant, place) {
        return Err(Refusal::NotHere);
    }
    match place {
        Place::UpperCompartment => control(session, Level::Upper),
        Place::LowerCompartment => control(session, Level::Lower),
        Place::JunctionBox => off(session, &[Cover::JunctionBox]),
        _ => Ok(()),
    }
}

/// A wire end at one place reaches a screw.
pub(super) fn reaches(from: Place, screw: Screw) -> bool {
    let heater = matches!(from, Place::JunctionBox | Place::UpperCompartment | Place::LowerCompartment);
    screw.place() == from || (heater && screw == Screw::Shell)
}
