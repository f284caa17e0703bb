//! The recirculation pump runs day and night, or its check valve no longer shuts and warm water rises round the loop by
//! itself. There is hot water at once and always; the heater never rests, and the bill tells.

use super::{Fault, FaultId, Parameter, Parameters, PartKind, Remedy, Scope, Stages, chosen, weight};
use crate::home::Home;
use crate::waterworks::Recirculation;

/// The catalogue entry.
pub const FAULT: Fault = Fault {
    id: FaultId::F44,
    module: module_path!(),
    weight: weight(8.0),
    parameters: &[Parameter::either("check", "0 timer stuck on, 1 check valve open")],
    // A timer that sticks, a check valve that no longer shuts: drawn so from the first day.
    stages: Stages::Sudden,
    fits,
    apply,
    remedies: &[Remedy::Replace(PartKind::PumpTimer), Remedy::Replace(PartKind::ReturnCheck)],
    scope: Scope::Piping,
    tempting: PartKind::LowerThermostat,
};

/// Loops are laid in houses with one heater of two elements that may work at any hour.
fn fits(home: &Home) -> bool {
    home.plant.plate.layout == crate::Layout::NonSimultaneous
}

fn apply(parameters: &Parameters, home: &mut Home) {
    let check_open = chosen(parameters, "check");
    home.plant.plumbing.recirculation =
        Some(Recirculation { pump: !check_open, check: !check_open, valve: 1.0 });
}
