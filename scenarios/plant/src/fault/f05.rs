//! Upper thermostat welded between U1 and U2. The upper element heats the top without end until the limit
//! opens; after somebody resets it, again.

use quantity::Tag;

use super::{Fault, FaultId, Parameters, PartKind, Remedy, Scope};
use crate::home::Home;
use crate::parts::Level;

/// The catalogue entry.
pub const FAULT: Fault = Fault {
    id: FaultId::F05,
    weight: 25.0,
    tag: Tag::CommonPractice,
    parameters: &[],
    fits,
    apply,
    remedies: &[Remedy::Replace(PartKind::UpperThermostat)],
    scope: Scope::HeaterParts,
    tempting: PartKind::Limit,
};

fn fits(_: &Home) -> bool {
    true
}

fn apply(_: &Parameters, home: &mut Home) {
    home.plant.thermostats[Level::Upper.index()].stuck = Some(true);
}
