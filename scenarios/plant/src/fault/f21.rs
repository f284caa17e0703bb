//! One fuse of the switch in the line has melted. The handle is on and the breaker too: leg to leg nothing, each leg
//! 120 V to ground, and the whole voltage across the melted fuse while an element calls.

use super::{Fault, FaultId, Parameter, Parameters, PartKind, Remedy, Scope, Stages, chosen, weight};
use crate::home::Home;
use crate::in_line::BoxKind;
use crate::parts::Contact;

/// The catalogue entry.
pub const FAULT: Fault = Fault {
    id: FaultId::F21,
    module: module_path!(),
    weight: weight(8.0),
    parameters: &[Parameter::either("leg-of-fuse", "0 first, 1 second")],
    // A fuse is whole or melted.
    stages: Stages::Sudden,
    fits,
    apply,
    remedies: &[Remedy::Replace(PartKind::Fuse)],
    scope: Scope::Panel,
    tempting: PartKind::UpperThermostat,
};

fn fits(home: &Home) -> bool {
    home.plant.in_line.is_some_and(|one| one.kind == BoxKind::FusedSwitch) && !home.plant.wiring.hot_neutral
}

fn apply(parameters: &Parameters, home: &mut Home) {
    let leg = usize::from(chosen(parameters, "leg-of-fuse"));
    if let Some(fitted) = &mut home.plant.in_line {
        fitted.fuses[leg] = Contact::Open;
    }
}
