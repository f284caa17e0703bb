//! Lower thermostat welded between D1 and D2. Once the top is satisfied the lower element heats the whole
//! tank without end; the limit opens late.

use super::{Fault, FaultId, Parameters, PartKind, Remedy, Scope, Stages, weight};
use crate::home::Home;
use crate::parts::Level;

/// The catalogue entry.
pub const FAULT: Fault = Fault {
    id: FaultId::F06,
    module: module_path!(),
    weight: weight(20.0),
    parameters: &[],
    // A weld comes with one closing.
    stages: Stages::Sudden,
    fits,
    apply,
    remedies: &[Remedy::Replace(PartKind::LowerThermostat)],
    scope: Scope::HeaterParts,
    tempting: PartKind::Limit,
};

fn fits(home: &Home) -> bool {
    home.plant.plate.layout.has_thermostats() && home.plant.plate.has(Level::Lower)
}

fn apply(_: &Parameters, home: &mut Home) {
    home.plant.thermostats[Level::Lower.index()].stuck = Some(true);
}
