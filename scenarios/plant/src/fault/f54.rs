//! Sulphate-reducing bacteria live on the hydrogen of the magnesium rod: hot water smells of rotten eggs, cold does not.
//! A rod of aluminium with zinc starves them.

use quantity::Tag;

use super::{Fault, FaultId, Parameter, Parameters, PartKind, Remedy, Scope, Stages, parameter, weight};
use crate::home::Home;

/// The catalogue entry.
pub const FAULT: Fault = Fault {
    id: FaultId::F54,
    module: module_path!(),
    weight: weight(15.0),
    parameters: &[Parameter::between(
        "activity",
        [0.5, 1.5],
        "of many bacteria",
        Tag::Model("a whiff in the morning to a reek"),
    )],
    // Any activity drawn smells; nobody measures how much.
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
    home.plant.vessel.bacteria = parameter(parameters, "activity");
    home.plant.as_it_stands();
}
