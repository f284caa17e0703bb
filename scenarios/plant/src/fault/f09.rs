//! One pole of the limit burnt open. The button does nothing. While an element calls, the whole supply
//! stands across that pole.

use quantity::Tag;

use super::{Fault, FaultId, Parameter, Parameters, PartKind, Remedy, Scope, parameter};
use crate::home::Home;
use crate::parts::Contact;

/// The catalogue entry.
pub const FAULT: Fault = Fault {
    id: FaultId::F09,
    weight: 8.0,
    tag: Tag::CommonPractice,
    parameters: &[Parameter {
        name: "pole",
        low: 0.0,
        high: 1.0,
        unit: "0 for H1-H2, 1 for H3-H4",
        logarithmic: false,
        whole: true,
    }],
    fits,
    apply,
    remedies: &[Remedy::Replace(PartKind::Limit)],
    scope: Scope::HeaterParts,
    tempting: PartKind::Breaker,
};

fn fits(_: &Home) -> bool {
    true
}

fn apply(parameters: &Parameters, home: &mut Home) {
    let pole = usize::from(parameter(parameters, "pole") >= 0.5);
    home.plant.limit.poles[pole] = Contact::Open;
}
