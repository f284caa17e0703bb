//! The relief valve's seat is fouled. It weeps at ordinary pressure and temperature, and two flushes do not cure it.

use quantity::Tag;

use super::{Fault, FaultId, Parameter, Parameters, PartKind, Remedy, Scope, Stages, Way, parameter, weight};
use crate::home::Home;

/// The catalogue entry.
pub const FAULT: Fault = Fault {
    id: FaultId::F47,
    module: module_path!(),
    weight: weight(12.0),
    parameters: &[Parameter::spread("diameter", [0.0001, 0.0003], "m", Tag::Model("a drip to a dribble"))],
    stages: Stages::Along(Way::Grows("diameter")),
    fits,
    apply,
    remedies: &[Remedy::Replace(PartKind::ReliefValve)],
    scope: Scope::Piping,
    tempting: PartKind::ExpansionTank,
};

fn fits(_: &Home) -> bool {
    true
}

fn apply(parameters: &Parameters, home: &mut Home) {
    home.plant.plumbing.relief.weep = parameter(parameters, "diameter");
}
