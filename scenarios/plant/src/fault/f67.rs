//! Both elements open: the tank once fired dry, or one died unnoticed and the other followed. There is no hot water,
//! and there is still none after one of them has been changed.

use super::{Fault, FaultId, Parameters, PartKind, Remedy, Scope, Stages, weight};
use crate::home::Home;
use crate::parts::Level;

/// The catalogue entry.
pub const FAULT: Fault = Fault {
    id: FaultId::F67,
    module: module_path!(),
    weight: weight(8.0),
    parameters: &[],
    // Coils are whole or broken.
    stages: Stages::Sudden,
    fits,
    apply,
    remedies: &[Remedy::ReplaceAll(&[PartKind::UpperElement, PartKind::LowerElement])],
    scope: Scope::HeaterParts,
    tempting: PartKind::UpperThermostat,
};

fn fits(home: &Home) -> bool {
    home.plant.plate.has(Level::Lower)
}

fn apply(_: &Parameters, home: &mut Home) {
    home.plant.elements.iter_mut().for_each(|element| element.open = true);
}
