//! The rod is nearly spent and nobody can tell: only a look at it shows its core, and over how much of it.

use quantity::Tag;

use super::{Fault, FaultId, Parameter, Parameters, PartKind, Remedy, Scope, Stages, Way, parameter, weight};
use crate::home::Home;

/// The catalogue entry.
pub const FAULT: Fault = Fault {
    id: FaultId::F56,
    module: module_path!(),
    weight: weight(10.0),
    parameters: &[Parameter::between("left", [0.0, 0.3], "of the rod", Tag::Model("core bare in places"))],
    stages: Stages::Along(Way::Shrinks("left")),
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
