//! Both poles of the heater's breaker sit on the same leg of the bus: a two-pole breaker in a space it does not belong in,
//! or a tandem, whose two halves share one stab wherever it sits. Each shows 120 V to ground and nothing to the other, and
//! goes on doing so with the heater's wires off: no back-feed.

use super::{Fault, FaultId, Parameter, Parameters, PartKind, Remedy, Scope, Stages, chosen, weight};
use crate::home::Home;
use crate::supply::{Circuit, Stab};

/// The catalogue entry.
pub const FAULT: Fault = Fault {
    id: FaultId::F28,
    module: module_path!(),
    weight: weight(4.0),
    parameters: &[
        Parameter::either("stab", "0 leg 1, 1 leg 2"),
        Parameter::either("tandem", "0 a two-pole breaker in the wrong space, 1 a tandem"),
    ],
    // Somebody put it there.
    stages: Stages::Sudden,
    fits,
    apply,
    // A tandem moved is on one leg again.
    remedies: &[Remedy::MoveBreaker, Remedy::Replace(PartKind::Breaker)],
    scope: Scope::Panel,
    tempting: PartKind::UpperElement,
};

fn fits(home: &Home) -> bool {
    home.plant.panel.feeding(Circuit::Heater).is_some_and(|b| !b.is_single())
}

fn apply(parameters: &Parameters, home: &mut Home) {
    let stab = if chosen(parameters, "stab") { Stab::Two } else { Stab::One };
    for breaker in home.plant.panel.breakers.iter_mut().filter(|b| b.feeds == Circuit::Heater) {
        breaker.stabs = [Some(stab); 2];
        breaker.tandem = chosen(parameters, "tandem").then_some([false; 2]);
    }
}
