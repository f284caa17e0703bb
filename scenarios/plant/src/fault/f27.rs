//! A 240 V heater on a 208 V supply. Nothing is broken: it makes three quarters of its power and takes a
//! third longer.

use quantity::{Constant, Tag, Volts};

use super::{Advice, Fault, FaultId, Parameters, PartKind, Remedy, Scope, weight};
use crate::home::Home;
use crate::supply::ServiceKind;

/// The catalogue entry.
pub const FAULT: Fault = Fault {
    id: FaultId::F27,
    module: module_path!(),
    weight: weight(8.0),
    parameters: &[],
    fits,
    apply,
    remedies: &[Remedy::Advise(Advice::LowSupplyVoltage)],
    scope: Scope::Words,
    tempting: PartKind::UpperElement,
};

quantity::constants! {
    /// Leg to leg on a split-phase service.
    const SPLIT_PHASE: Constant<Volts> = Constant::of(
        "leg to leg on a split-phase service",
        Volts(240.0),
        Tag::Published("ANSI C84.1, nominal system voltages: 120/240 V"),
    );
}

fn fits(home: &Home) -> bool {
    home.plant.plate.element.volts.near(SPLIT_PHASE.get(), Volts(1.0))
}

fn apply(_: &Parameters, home: &mut Home) {
    home.plant.service.kind = ServiceKind::Wye208;
}
