//! A relay of an electronic heater's board failed: welded, it heats with no call until the board or the limit locks it
//! out; open, it never heats.

use super::{
    Fault, FaultId, Parameter, Parameters, PartKind, Remedy, Scope, Stages, chosen, level_of, weight,
};
use crate::home::Home;
use crate::parts::Contact;

/// The catalogue entry.
pub const FAULT: Fault = Fault {
    id: FaultId::F61,
    module: module_path!(),
    weight: weight(6.0),
    parameters: &[
        Parameter::either("level", "0 upper, 1 lower"),
        Parameter::either("stuck", "0 open, 1 welded"),
    ],
    // Drawn open or welded only.
    stages: Stages::Sudden,
    fits,
    apply,
    remedies: &[Remedy::Replace(PartKind::Board)],
    scope: Scope::HeaterParts,
    tempting: PartKind::UpperElement,
};

fn fits(home: &Home) -> bool {
    home.plant.board.is_some()
}

fn apply(parameters: &Parameters, home: &mut Home) {
    // The plant keeps a board's relays where a thermostat has its contacts.
    let relay = &mut home.plant.thermostats[level_of(parameters).index()];
    if chosen(parameters, "stuck") {
        relay.stuck = Some(true);
    } else {
        relay.cold_contact = Contact::Open;
    }
}
