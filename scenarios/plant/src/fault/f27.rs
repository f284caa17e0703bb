//! A 240 V heater on a 208 V supply. Nothing is broken: it makes three quarters of its power and takes a
//! third longer.

use super::{Advice, Fault, FaultId, Parameters, PartKind, Remedy, Scope, Stages, weight};
use crate::home::Home;
use crate::supply::ServiceKind;

/// The catalogue entry.
pub const FAULT: Fault = Fault {
    id: FaultId::F27,
    module: module_path!(),
    weight: weight(8.0),
    parameters: &[],
    // Another supply, not wear.
    stages: Stages::Sudden,
    fits,
    apply,
    remedies: &[Remedy::Advise(Advice::LowSupplyVoltage)],
    scope: Scope::Words,
    tempting: PartKind::UpperElement,
};

fn fits(home: &Home) -> bool {
    home.plant.service.kind == ServiceKind::Split240 && home.plant.plate.supply() == ServiceKind::Split240
}

fn apply(_: &Parameters, home: &mut Home) {
    home.plant.service.kind = ServiceKind::Wye208;
}
