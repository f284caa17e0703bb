//! Lower element grounded in the middle of its coil. The permanent leg drives current through part of the
//! coil to the shell whatever the thermostats say, so the tank runs hot until the limit opens. End to end
//! it still reads right.

use quantity::{Ohms, Tag};

use super::{Fault, FaultId, Parameter, Parameters, PartKind, Remedy, Scope, Stages, parameter, weight};
use crate::home::Home;
use crate::parts::{Level, SheathFault};

/// The catalogue entry.
pub const FAULT: Fault = Fault {
    id: FaultId::F13,
    module: module_path!(),
    weight: weight(18.0),
    parameters: &[
        Parameter::between(
            "fraction",
            [0.3, 0.7],
            "of the coil from LEa",
            Tag::Model("far enough from both ends that no breaker trips"),
        ),
        Parameter::spread("ohms", [0.05, 0.5], "ohm", Tag::Model("a coil that touches its sheath")),
    ],
    // Drawn grounded hard only; its beginning, a soft leak, is F75.
    stages: Stages::Sudden,
    fits,
    apply,
    remedies: &[Remedy::Replace(PartKind::LowerElement)],
    scope: Scope::HeaterParts,
    tempting: PartKind::UpperThermostat,
};

fn fits(home: &Home) -> bool {
    home.plant.plate.has(Level::Lower) && !home.plant.wiring.hot_neutral
}

fn apply(parameters: &Parameters, home: &mut Home) {
    home.plant.elements[Level::Lower.index()].leak = Some(SheathFault {
        fraction: parameter(parameters, "fraction"),
        resistance: Ohms(parameter(parameters, "ohms")),
    });
}
