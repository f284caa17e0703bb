//! A thermistor of an electronic heater open or shorted. The board reads nonsense, says so, and locks heating out.

use super::{
    Fault, FaultId, Parameter, Parameters, PartKind, Remedy, Scope, Stages, chosen, level_of, weight,
};
use crate::controls::board::Lead;
use crate::home::Home;

/// The catalogue entry.
pub const FAULT: Fault = Fault {
    id: FaultId::F60,
    module: module_path!(),
    weight: weight(6.0),
    parameters: &[
        Parameter::either("level", "0 upper, 1 lower"),
        Parameter::either("short", "0 open, 1 shorted"),
    ],
    // Drawn open or shorted only.
    stages: Stages::Sudden,
    fits,
    apply,
    remedies: &[Remedy::Replace(PartKind::UpperSensor), Remedy::Replace(PartKind::LowerSensor)],
    scope: Scope::HeaterParts,
    tempting: PartKind::Board,
};

fn fits(home: &Home) -> bool {
    home.plant.board.is_some()
}

fn apply(parameters: &Parameters, home: &mut Home) {
    let lead = if chosen(parameters, "short") { Lead::Shorted } else { Lead::Broken };
    if let Some(board) = &mut home.plant.board {
        board.sensors[level_of(parameters).index()].lead = lead;
    }
}
