//! Limit tripped, and its cause is gone: a surge, or air flushed out since. Nothing is heated. Line volts
//! at H1 to H3, none at H2 to H4. It latches once the tank is cool, and the heater then cuts out at its
//! dial.

use super::{Fault, FaultId, Parameters, PartKind, Remedy, Scope, Stages, weight};
use crate::home::Home;

/// The catalogue entry.
pub const FAULT: Fault = Fault {
    id: FaultId::F08,
    module: module_path!(),
    weight: weight(20.0),
    parameters: &[],
    // Tripped or not.
    stages: Stages::Sudden,
    fits,
    apply,
    remedies: &[Remedy::ResetLimit],
    scope: Scope::HeaterParts,
    tempting: PartKind::UpperElement,
};

fn fits(_: &Home) -> bool {
    true
}

fn apply(_: &Parameters, home: &mut Home) {
    home.plant.limit.tripped = true;
}
