//! Arcs where current starts, stops or goes astray at the point of work.

use plant::{Plant, Point, Wire};
use quantity::{Amps, Constant, Seconds, Tag, Volts};

use super::turn::Turn;
use crate::person::Harm;
use crate::shown::Noticed;

quantity::constants! {
    /// Below this current nothing worth telling flashes.
    const LEAST: Constant<Amps> = Constant::of("current below which nothing worth telling flashes", Amps(1.0), Tag::Model("a lamp's current"));
    /// How long a contact being made or broken burns.
    const MAKING: Constant<Seconds> = Constant::of("how long a contact that makes or breaks burns", Seconds(0.02), Tag::Model("about one period of the supply"));
    /// Above this current a wire carries a fault, not a load. Model: beyond every element.
    const FAULT: Constant<Amps> = Constant::of("current above which a wire carries a fault", Amps(80.0), Tag::Model("beyond every element"));
    /// A fault that no breaker clears burns itself free.
    const BURNS_FREE: Constant<Seconds> = Constant::of("a fault no breaker clears burns itself free", Seconds(2.0), Tag::Model("an order of magnitude; no document was found"));
}

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
    (current >= LEAST.get() && volts.get() > 1.0).then_some(Spark { at, volts, current })
}

/// Tells a spark after the act's time has passed: the breaker's own curve says how long it lasted.
pub(super) fn tell(turn: &mut Turn, spark: Option<Spark>) {
    let Some(Spark { at, volts, current }) = spark else { return };
    let cleared_after = if current >= FAULT.get() {
        turn.tripped_at.filter(|t| *t < BURNS_FREE.get()).unwrap_or(BURNS_FREE.get())
    } else {
        MAKING.get()
    };
    let protected = turn.s.me.protected();
    turn.noticed.push(Noticed::Flash { at });
    turn.harms.push(Harm::arc(volts, current, cleared_after, protected));
}
