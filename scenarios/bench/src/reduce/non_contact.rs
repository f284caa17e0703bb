//! The non-contact tester: it listens for a field, and its silence proves nothing.

use plant::{Place, Point, Screw};
use quantity::Seconds;

use super::turn::Turn;
use super::{Answered, senses};
use crate::action::Cover;
use crate::instrument::non_contact::{FLOATING, SOUNDS};
use crate::session::Session;
use crate::shown::{Refusal, Shown};

/// Holds it to a point. Plastic lets the field through, grounded sheet metal does not: behind a closed cover
/// the tester is silent whatever is there.
pub(super) fn hold(turn: &mut Turn, at: Point, time: Seconds) -> Answered {
    if !senses::there(&turn.s.home.plant, at) {
        return Err(Refusal::NotHere);
    }
    turn.pass(time);
    let plant = &turn.s.home.plant;
    let floats = turn.s.me.gloves && !senses::wet_floor(plant);
    let threshold = SOUNDS.get() * if floats { FLOATING.get() } else { 1.0 };
    let volts = plant.standing().volts(at, Point::Screw(Screw::G));
    Ok(Shown::NonContact { sounds: !shielded(&turn.s, at.place()) && volts.get() >= threshold })
}

/// Sheet metal stands in front of a place.
fn shielded(session: &Session, place: Place) -> bool {
    let metal = match place {
        Place::LoadCenter => Cover::PanelFront,
        Place::JunctionBox => Cover::JunctionBox,
        Place::InLineBox => Cover::BoxDoor,
        Place::UpperCompartment => Cover::Upper,
        Place::LowerCompartment => Cover::Lower,
        _ => return false,
    };
    !session.access.off.contains(&metal)
}
