//! A closed cold line and no expansion tank. Each heat-up without a draw drives the pressure to the relief
//! valve, which drips by night. Static pressure is ordinary.

use quantity::{Pressure, Tag};

use super::{Fault, FaultId, Parameter, Parameters, PartKind, Remedy, Scope, Stages, parameter, weight};
use crate::home::Home;

/// The catalogue entry.
pub const FAULT: Fault = Fault {
    id: FaultId::F45,
    module: module_path!(),
    weight: weight(25.0),
    parameters: &[Parameter::between(
        "psi",
        [55.0, 78.0],
        "psi",
        Tag::Model("ordinary static pressure, below the 80 psi that asks for a regulator"),
    )],
    // A tank that was never fitted.
    stages: Stages::Sudden,
    fits,
    apply,
    remedies: &[Remedy::Replace(PartKind::ExpansionTank)],
    scope: Scope::Piping,
    tempting: PartKind::ReliefValve,
};

fn fits(_: &Home) -> bool {
    true
}

fn apply(parameters: &Parameters, home: &mut Home) {
    home.plant.plumbing.closed = true;
    home.plant.plumbing.expansion = None;
    home.plant.plumbing.main = Pressure::psi(parameter(parameters, "psi"));
}
