//! Lower thermostat open: D1 to D2 never makes. Supply volts stand across it while the bottom is cold, none
//! at the lower element. Only the top third is heated.

use super::{Fault, FaultId, Parameters, PartKind, Remedy, Scope, Stages, weight};
use crate::home::Home;
use crate::parts::{Contact, Level};

/// The catalogue entry.
pub const FAULT: Fault = Fault {
    id: FaultId::F12,
    module: module_path!(),
    weight: weight(25.0),
    parameters: &[],
    // Drawn burnt away only; a contact that misses at times is F77.
    stages: Stages::Sudden,
    fits,
    apply,
    remedies: &[Remedy::Replace(PartKind::LowerThermostat)],
    scope: Scope::HeaterParts,
    tempting: PartKind::LowerElement,
};

fn fits(home: &Home) -> bool {
    home.plant.plate.layout.has_thermostats() && home.plant.plate.has(Level::Lower)
}

fn apply(_: &Parameters, home: &mut Home) {
    home.plant.thermostats[Level::Lower.index()].cold_contact = Contact::Open;
}
