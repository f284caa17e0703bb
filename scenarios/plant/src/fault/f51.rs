//! The drain valve drips from its spout. Nothing else is wet.

use quantity::Tag;

use super::{Fault, FaultId, Parameter, Parameters, PartKind, Remedy, Scope, Stages, Way, parameter, weight};
use crate::home::Home;

/// The catalogue entry.
pub const FAULT: Fault = Fault {
    id: FaultId::F51,
    module: module_path!(),
    weight: weight(15.0),
    parameters: &[Parameter::spread("diameter", [0.0001, 0.0003], "m", Tag::Model("a drip to a dribble"))],
    stages: Stages::Along(Way::Grows("diameter")),
    fits,
    apply,
    remedies: &[Remedy::Replace(PartKind::DrainValve)],
    scope: Scope::Piping,
    tempting: PartKind::Heater,
};

fn fits(_: &Home) -> bool {
    true
}

fn apply(parameters: &Parameters, home: &mut Home) {
    home.plant.plumbing.drain_drip = parameter(parameters, "diameter");
}
