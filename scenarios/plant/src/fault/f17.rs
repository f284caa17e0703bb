//! Dry-fired and failed later. The upper element once glowed in air, at a refill: its sheath blistered and cracked. Now
//! the coil is broken, and water in the crack leads from its end to the shell.

use quantity::{Ohms, Tag};

use super::{Fault, FaultId, Parameter, Parameters, PartKind, Remedy, Scope, Stages, parameter, weight};
use crate::home::Home;
use crate::parts::{Level, SheathFault};

/// The catalogue entry.
pub const FAULT: Fault = Fault {
    id: FaultId::F17,
    module: module_path!(),
    weight: weight(6.0),
    parameters: &[
        Parameter::between(
            "fraction",
            [0.2, 0.8],
            "of the coil from UEa",
            Tag::Model("where the sheath glowed: away from its cold ends"),
        ),
        Parameter::spread(
            "ohms",
            [3e3, 3e4],
            "ohm",
            Tag::Model("tap water in a hairline crack: milliamperes, too little to heat or trip anything"),
        ),
    ],
    // The coil is broken; how wet its crack is moves with the water.
    stages: Stages::Sudden,
    fits,
    apply,
    remedies: &[Remedy::Replace(PartKind::UpperElement)],
    scope: Scope::HeaterParts,
    tempting: PartKind::UpperThermostat,
};

fn fits(_: &Home) -> bool {
    true
}

fn apply(parameters: &Parameters, home: &mut Home) {
    let element = &mut home.plant.elements[Level::Upper.index()];
    element.open = true;
    element.scorched = true;
    element.leak_needs_water = true;
    element.leak = Some(SheathFault {
        fraction: parameter(parameters, "fraction"),
        resistance: Ohms(parameter(parameters, "ohms")),
    });
}
