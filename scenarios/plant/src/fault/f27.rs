//! A 240 V heater on a 208 V supply. Nothing is broken: it makes three quarters of its power and takes a
//! third longer.

use quantity::Tag;

use super::{Advice, Fault, FaultId, Parameters, PartKind, Remedy, Scope};
use crate::home::Home;
use crate::supply::ServiceKind;

/// The catalogue entry.
pub const FAULT: Fault = Fault {
    id: FaultId::F27,
    weight: 8.0,
    tag: Tag::CommonPractice,
    parameters: &[],
    fits,
    apply,
    remedies: &[Remedy::Advise(Advice::LowSupplyVoltage)],
    scope: Scope::Words,
    tempting: PartKind::UpperElement,
};

fn fits(home: &Home) -> bool {
    (home.plant.plate.element.volts.get() - 240.0).abs() < 1.0
}

fn apply(_: &Parameters, home: &mut Home) {
    home.plant.service.kind = ServiceKind::Wye208;
}
