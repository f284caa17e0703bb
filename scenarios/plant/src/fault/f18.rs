//! The breaker is off, or tripped once with nothing behind it. No volts at H1 to H3 nor from either to
//! ground. The elements are clear of the shell; it is closed once, then clamped and watched.

use super::{Fault, FaultId, Parameter, Parameters, PartKind, Remedy, Scope, Stages, chosen, weight};
use crate::home::Home;
use crate::supply::{Circuit, Handle};

/// The catalogue entry.
pub const FAULT: Fault = Fault {
    id: FaultId::F18,
    module: module_path!(),
    weight: weight(35.0),
    parameters: &[Parameter::either("tripped", "0 off, 1 tripped")],
    // A handle is on, off or tripped.
    stages: Stages::Sudden,
    fits,
    apply,
    remedies: &[Remedy::CloseBreaker],
    scope: Scope::Words,
    tempting: PartKind::Limit,
};

fn fits(_: &Home) -> bool {
    true
}

fn apply(parameters: &Parameters, home: &mut Home) {
    let tripped = chosen(parameters, "tripped");
    for breaker in home.plant.panel.breakers.iter_mut().filter(|b| b.feeds == Circuit::Heater) {
        breaker.handle = if tripped { Handle::Tripped } else { Handle::Off };
    }
}
