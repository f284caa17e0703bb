//! Lower element open. The wire inside the coil has burnt through, usually under scale. Only the top third
//! is ever heated, so hot water runs out fast. Rated volts stand across the element and no current flows;
//! with its wires off it reads over range.

use super::{Fault, FaultId, Parameters, PartKind, Remedy, Scope, Stages, weight};
use crate::home::Home;
use crate::parts::Level;

/// The catalogue entry.
pub const FAULT: Fault = Fault {
    id: FaultId::F01,
    module: module_path!(),
    weight: weight(150.0),
    parameters: &[],
    // A coil is whole or broken: it gives no warning that a meter reads.
    stages: Stages::Sudden,
    fits,
    apply,
    remedies: &[Remedy::Replace(PartKind::LowerElement)],
    scope: Scope::HeaterParts,
    tempting: PartKind::LowerThermostat,
};

fn fits(home: &Home) -> bool {
    home.plant.plate.has(Level::Lower)
}

fn apply(_: &Parameters, home: &mut Home) {
    home.plant.elements[Level::Lower.index()].open = true;
}
