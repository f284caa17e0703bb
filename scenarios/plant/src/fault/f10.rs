//! Upper thermostat fails to transfer: the contact to U4 is burnt away. The top third is heated and the
//! lower element never runs.

use quantity::Tag;

use super::{Fault, FaultId, Parameters, PartKind, Remedy, Scope};
use crate::home::Home;
use crate::parts::{Contact, Level};

/// The catalogue entry.
pub const FAULT: Fault = Fault {
    id: FaultId::F10,
    weight: 25.0,
    tag: Tag::CommonPractice,
    parameters: &[],
    fits,
    apply,
    remedies: &[Remedy::Replace(PartKind::UpperThermostat)],
    scope: Scope::HeaterParts,
    tempting: PartKind::LowerElement,
};

fn fits(_: &Home) -> bool {
    true
}

fn apply(_: &Parameters, home: &mut Home) {
    home.plant.thermostats[Level::Upper.index()].hot_contact = Contact::Open;
}
