//! Hot and cold connections swapped on top of the heater. Cold water comes in at the top and goes straight out again,
//! and the dip tube takes the hot line's water from the bottom.

use super::{Fault, FaultId, Parameters, PartKind, Remedy, Scope, Stages, weight};
use crate::home::Home;

/// The catalogue entry.
pub const FAULT: Fault = Fault {
    id: FaultId::F40,
    module: module_path!(),
    weight: weight(4.0),
    parameters: &[],
    // Somebody piped it.
    stages: Stages::Sudden,
    fits,
    apply,
    remedies: &[Remedy::Replace(PartKind::Connections)],
    scope: Scope::Piping,
    tempting: PartKind::UpperElement,
};

fn fits(_: &Home) -> bool {
    true
}

fn apply(_: &Parameters, home: &mut Home) {
    home.plant.plumbing.reversed = true;
}
