//! The upper thermostat welded and the limit's contacts welded behind it. Its button pops, nothing opens: the relief
//! valve is the last thing that works, and does its work.

use super::{Fault, FaultId, Parameters, PartKind, Remedy, Scope, Stages, weight};
use crate::home::Home;
use crate::parts::Level;

/// The catalogue entry.
pub const FAULT: Fault = Fault {
    id: FaultId::F48,
    module: module_path!(),
    weight: weight(5.0),
    parameters: &[],
    // A weld comes with one closing.
    stages: Stages::Sudden,
    fits,
    apply,
    remedies: &[Remedy::ReplaceAll(&[PartKind::UpperThermostat, PartKind::Limit])],
    scope: Scope::HeaterParts,
    tempting: PartKind::ReliefValve,
};

/// A board watches the water by itself.
fn fits(home: &Home) -> bool {
    home.plant.plate.layout.has_thermostats()
}

fn apply(_: &Parameters, home: &mut Home) {
    home.plant.limit.welded = [true; 2];
    home.plant.thermostats[Level::Upper.index()].stuck = Some(true);
}
