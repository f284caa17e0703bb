//! Demand beyond capacity: guests, a bigger tub, another shower head. The heater is sound, the volume test
//! passes, and still it runs out.

use quantity::Tag;

use super::{
    Advice, Fault, FaultId, Parameter, Parameters, PartKind, Remedy, Scope, Stages, parameter, weight,
};
use crate::home::Home;

/// The catalogue entry.
pub const FAULT: Fault = Fault {
    id: FaultId::F04,
    module: module_path!(),
    weight: weight(45.0),
    parameters: &[Parameter::between(
        "demand",
        [1.7, 2.6],
        "times",
        Tag::Invented("guests, a bigger tub, another shower head"),
    )],
    // People, not wear.
    stages: Stages::Sudden,
    fits,
    apply,
    remedies: &[Remedy::Advise(Advice::DemandExceedsCapacity)],
    scope: Scope::Words,
    tempting: PartKind::LowerElement,
};

fn fits(_: &Home) -> bool {
    true
}

fn apply(parameters: &Parameters, home: &mut Home) {
    home.demand = parameter(parameters, "demand");
}
