//! The clamp.

use plant::{Place, Screw, Wire};
use quantity::{Amps, Seconds};

use super::turn::Turn;
use super::{Answered, meter, reach, senses};
use crate::action::Clamped;
use crate::shown::{Refusal, Shown};

/// Last digit of the clamp. Common practice, no source.
const DIGIT: f64 = 0.1;

/// Current around one wire, or around both legs at once.
pub(super) fn clamp(turn: &mut Turn, around: Clamped, time: Seconds) -> Answered {
    let wire = match around {
        Clamped::Wire { wire } => wire,
        Clamped::BothLegs => Wire::CableA,
    };
    if !senses::exists(&turn.s.home.plant, wire) {
        return Err(Refusal::NotHere);
    }
    // Open at either end is enough; the refusal names what is in the way nearest the heater.
    let [near, far] = wire.home().map(Screw::place);
    let open = |place: Place| reach::place(&turn.s, place);
    open(near).or(open(far))?;
    turn.pass(time);
    let live = turn.s.home.plant.energise(&[]);
    let amps = match around {
        Clamped::Wire { wire } => live.amps(wire),
        Clamped::BothLegs => live.both_legs(),
    };
    Ok(Shown::Clamp { amps: Amps(meter::to_digit(amps.get().abs(), DIGIT)) })
}
