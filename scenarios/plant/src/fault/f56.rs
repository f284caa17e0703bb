//! The rod is nearly spent and nobody can tell: only a look at it shows its core.

use quantity::Tag;

use super::{Fault, FaultId, Parameter, Parameters, PartKind, Remedy, Scope, Stages, parameter, weight};
use crate::home::Home;

/// The catalogue entry.
pub const FAULT: Fault = Fault {
    id: FaultId::F56,
    module: module_path!(),
    weight: weight(10.0),
    parameters: &[Parameter::between("left", [0.0, 0.3], "of the rod", Tag::Model("core bare in places"))],
    // Drawn with its core in sight only; a look does not measure how much of it.
    stages: Stages::Sudden,
    fits,
    apply,
    remedies: &[Remedy::Replace(PartKind::Anode)],
    scope: Scope::Piping,
    tempting: PartKind::Heater,
};

fn fits(_: &Home) -> bool {
    true
}

fn apply(parameters: &Parameters, home: &mut Home) {
    home.plant.vessel.anode.left = parameter(parameters, "left");
    home.plant.as_it_stands();
}
