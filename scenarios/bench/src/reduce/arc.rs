//! Arcs where current starts, stops or goes astray at the point of work.

use plant::{Plant, Point, Wire};
use quantity::{Amps, Seconds, Volts};

use super::turn::Turn;
use crate::person::Harm;
use crate::shown::Noticed;

/// Below this current nothing worth telling flashes.
const LEAST: Amps = Amps(1.0);
/// How long a contact being made or broken burns. Model: no source.
const MAKING: Seconds = Seconds(0.02);
/// Above this current a wire carries a fault, not a load. Model: beyond every element.
const FAULT: Amps = Amps(80.0);
/// A fault that no breaker clears burns itself free. Model: no source.
const BURNS_FREE: Seconds = Seconds(2.0);

/// A spark at a place of work, told once time has shown when it was cleared.
pub(super) struct Spark {
    at: Point,
    volts: Volts,
    current: Amps,
}

/// Current that a wire carries now.
pub(super) fn amps(plant: &Plant, wire: Wire) -> Amps {
    plant.standing().amps(wire).abs()
}

/// A spark of a current, if it is one.
pub(super) fn spark(at: Point, volts: Volts, current: Amps) -> Option<Spark> {
    (current >= LEAST && volts.get() > 1.0).then_some(Spark { at, volts, current })
}

/// Tells a spark after the act's time has passed: the breaker's own curve says how long it lasted.
pub(super) fn tell(turn: &mut Turn, spark: Option<Spark>) {
    let Some(Spark { at, volts, current }) = spark else { return };
    let cleared_after = if current >= FAULT {
        turn.tripped_at.filter(|t| *t < BURNS_FREE).unwrap_or(BURNS_FREE)
    } else {
        MAKING
    };
    let protected = turn.s.me.protected();
    turn.noticed.push(Noticed::Flash { at });
    turn.harms.push(Harm::arc(volts, current, cleared_after, protected));
}
