//! Upper thermostat fails to transfer: the contact to U4 is burnt away. The top third is heated and the
//! lower element never runs.

use super::{Fault, FaultId, Parameters, PartKind, Remedy, Scope, Stages, weight};
use crate::home::Home;
use crate::parts::{Contact, Level};

/// The catalogue entry.
pub const FAULT: Fault = Fault {
    id: FaultId::F10,
    module: module_path!(),
    weight: weight(25.0),
    parameters: &[],
    // Drawn burnt away only; a contact that misses at times is F77.
    stages: Stages::Sudden,
    fits,
    apply,
    remedies: &[Remedy::Replace(PartKind::UpperThermostat)],
    scope: Scope::HeaterParts,
    tempting: PartKind::LowerElement,
};

fn fits(home: &Home) -> bool {
    home.plant.plate.layout.transfers()
}

fn apply(_: &Parameters, home: &mut Home) {
    home.plant.thermostats[Level::Upper.index()].hot_contact = Contact::Open;
}
