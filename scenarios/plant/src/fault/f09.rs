//! One pole of the limit burnt open. The button does nothing. While an element calls, the whole supply
//! stands across that pole.

use super::{Fault, FaultId, Parameter, Parameters, PartKind, Remedy, Scope, Stages, chosen, weight};
use crate::home::Home;
use crate::parts::Contact;

/// The catalogue entry.
pub const FAULT: Fault = Fault {
    id: FaultId::F09,
    module: module_path!(),
    weight: weight(8.0),
    parameters: &[Parameter::either("pole", "0 for H1-H2, 1 for H3-H4")],
    // Drawn burnt through only; a pole that still conducts is no field of a limit's.
    stages: Stages::Sudden,
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
    let pole = usize::from(chosen(parameters, "pole"));
    home.plant.limit.poles[pole] = Contact::Open;
}
