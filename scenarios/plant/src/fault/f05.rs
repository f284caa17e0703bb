//! Upper thermostat welded between U1 and U2. The upper element heats the top without end until the limit
//! opens; after somebody resets it, again.

use super::{Fault, FaultId, Parameters, PartKind, Remedy, Scope, Stages, weight};
use crate::home::Home;
use crate::parts::Level;

/// The catalogue entry.
pub const FAULT: Fault = Fault {
    id: FaultId::F05,
    module: module_path!(),
    weight: weight(25.0),
    parameters: &[],
    // A weld comes with one closing.
    stages: Stages::Sudden,
    fits,
    apply,
    remedies: &[Remedy::Replace(PartKind::UpperThermostat)],
    scope: Scope::HeaterParts,
    tempting: PartKind::Limit,
};

fn fits(home: &Home) -> bool {
    home.plant.plate.layout.has_thermostats()
}

fn apply(_: &Parameters, home: &mut Home) {
    home.plant.thermostats[Level::Upper.index()].stuck = Some(true);
}
