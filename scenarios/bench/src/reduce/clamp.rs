//! The clamp.

use plant::{Place, Screw, Wire};
use quantity::{Amps, Seconds};

use super::turn::Turn;
use super::{Answered, reach, senses};
use crate::action::Clamped;
use crate::instrument;
use crate::shown::{Refusal, Shown};

/// Current around one wire, or around two at once.
pub(super) fn clamp(turn: &mut Turn, around: Clamped, time: Seconds) -> Answered {
    let wires = match around {
        Clamped::Wire { wire } => vec![wire],
        Clamped::BothLegs => turn.s.home.plant.wiring.feeders().to_vec(),
        Clamped::Pair { first, second } => vec![first, second],
    };
    if !wires.iter().all(|wire| senses::exists(&turn.s.home.plant, *wire)) {
        return Err(Refusal::NotHere);
    }
    let open = |place: Place| reach::place(&turn.s, place);
    for wire in &wires {
        // Open at either end is enough; the refusal names what is in the way nearest the heater.
        let [near, far] = wire.home().map(Screw::place);
        open(near).or(open(far))?;
    }
    if wires.len() > 1 && !together(&wires) {
        return Err(Refusal::NothingToReach);
    }
    turn.pass(time);
    let amps = turn.s.home.plant.standing().clamp(&wires).get();
    let shown = instrument::clamp::AMPS.read(amps, turn.s.job.kit.clamp);
    // Beyond its last range the jaws only saturate: it stands at the end.
    Ok(Shown::Clamp { amps: Amps(shown.unwrap_or(instrument::clamp::END.get())) })
}

/// Two wires pass one place, where the jaws can close around both.
fn together(wires: &[Wire]) -> bool {
    let places = |wire: &Wire| wire.home().map(Screw::place);
    let Some((first, rest)) = wires.split_first() else { return false };
    places(first).iter().any(|place| rest.iter().all(|wire| places(wire).contains(place)))
}
