//! The upper element fired dry: somebody put power on before the tank was full. Its coil is open, its plating burnt
//! off. There has been no hot water since that day.

use super::{Fault, FaultId, Parameters, PartKind, Remedy, Scope, Stages, weight};
use crate::home::Home;
use crate::parts::Level;

/// The catalogue entry.
pub const FAULT: Fault = Fault {
    id: FaultId::F16,
    module: module_path!(),
    weight: weight(12.0),
    parameters: &[],
    // Seconds in air do it.
    stages: Stages::Sudden,
    fits,
    apply,
    remedies: &[Remedy::Replace(PartKind::UpperElement)],
    scope: Scope::HeaterParts,
    tempting: PartKind::UpperThermostat,
};

fn fits(_: &Home) -> bool {
    true
}

fn apply(_: &Parameters, home: &mut Home) {
    let element = &mut home.plant.elements[Level::Upper.index()];
    element.open = true;
    element.scorched = true;
}
