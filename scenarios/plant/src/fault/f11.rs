//! Upper thermostat never feeds the upper element. Either the contact to U2 is burnt away, and with a cold
//! top nothing runs at all, or the blade is stuck on U4, and only the lower element heats.

use super::{Fault, FaultId, Parameter, Parameters, PartKind, Remedy, Scope, Stages, chosen, weight};
use crate::home::Home;
use crate::parts::{Contact, Level};

/// The catalogue entry.
pub const FAULT: Fault = Fault {
    id: FaultId::F11,
    module: module_path!(),
    weight: weight(12.0),
    parameters: &[Parameter::either("blade", "0 open both ways, 1 stuck transferred")],
    // Drawn burnt away or stuck only; a contact that misses at times is F77.
    stages: Stages::Sudden,
    fits,
    apply,
    remedies: &[Remedy::Replace(PartKind::UpperThermostat)],
    scope: Scope::HeaterParts,
    tempting: PartKind::UpperElement,
};

fn fits(home: &Home) -> bool {
    home.plant.plate.layout.has_thermostats()
}

fn apply(parameters: &Parameters, home: &mut Home) {
    let thermostat = &mut home.plant.thermostats[Level::Upper.index()];
    if chosen(parameters, "blade") {
        thermostat.stuck = Some(false);
    } else {
        thermostat.cold_contact = Contact::Open;
    }
}
