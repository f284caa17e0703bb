//! Lower element grounded in the middle of its coil. The permanent leg drives current through part of the
//! coil to the shell whatever the thermostats say, so the tank runs hot until the limit opens. End to end
//! it still reads right.

use quantity::{Ohms, Tag};

use super::{Fault, FaultId, Parameter, Parameters, PartKind, Remedy, Scope, parameter};
use crate::home::Home;
use crate::parts::{Level, SheathFault};

/// The catalogue entry.
pub const FAULT: Fault = Fault {
    id: FaultId::F13,
    weight: 18.0,
    tag: Tag::CommonPractice,
    parameters: &[
        Parameter {
            name: "fraction",
            low: 0.3,
            high: 0.7,
            unit: "of the coil from LEa",
            logarithmic: false,
            whole: false,
        },
        Parameter { name: "ohms", low: 0.05, high: 0.5, unit: "ohm", logarithmic: true, whole: false },
    ],
    fits,
    apply,
    remedies: &[Remedy::Replace(PartKind::LowerElement)],
    scope: Scope::HeaterParts,
    tempting: PartKind::UpperThermostat,
};

fn fits(_: &Home) -> bool {
    true
}

fn apply(parameters: &Parameters, home: &mut Home) {
    home.plant.elements[Level::Lower.index()].leak = Some(SheathFault {
        fraction: parameter(parameters, "fraction"),
        resistance: Ohms(parameter(parameters, "ohms")),
    });
}
