//! Demand beyond capacity: guests, a bigger tub, another shower head. The heater is sound, the volume test
//! passes, and still it runs out.

use quantity::Tag;

use super::{Advice, Fault, FaultId, Parameter, Parameters, PartKind, Remedy, Scope, parameter};
use crate::home::Home;

/// The catalogue entry.
pub const FAULT: Fault = Fault {
    id: FaultId::F04,
    weight: 45.0,
    tag: Tag::CommonPractice,
    parameters: &[Parameter {
        name: "demand",
        low: 1.7,
        high: 2.6,
        unit: "times",
        logarithmic: false,
        whole: false,
    }],
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
