//! Upper element open. The top never gets warm, so the upper thermostat never hands over and the lower
//! element never runs either. Rated volts across the element, no current.

use super::{Fault, FaultId, Parameters, PartKind, Remedy, Scope, Stages, weight};
use crate::home::Home;
use crate::parts::Level;

/// The catalogue entry.
pub const FAULT: Fault = Fault {
    id: FaultId::F02,
    module: module_path!(),
    weight: weight(70.0),
    parameters: &[],
    // A coil is whole or broken: it gives no warning that a meter reads.
    stages: Stages::Sudden,
    fits,
    apply,
    remedies: &[Remedy::Replace(PartKind::UpperElement)],
    scope: Scope::HeaterParts,
    tempting: PartKind::LowerElement,
};

fn fits(_: &Home) -> bool {
    true
}

fn apply(_: &Parameters, home: &mut Home) {
    home.plant.elements[Level::Upper.index()].open = true;
}
