//! Dials far apart. With the upper one low the top is only lukewarm after a long draw; with the lower one
//! low most of the tank is.

use quantity::{Tag, Temperature};

use super::{Fault, FaultId, Parameter, Parameters, PartKind, Remedy, Scope, level_of, parameter};
use crate::home::Home;
use crate::parts::Level;

/// The catalogue entry.
pub const FAULT: Fault = Fault {
    id: FaultId::F36,
    weight: 8.0,
    tag: Tag::CommonPractice,
    parameters: &[
        Parameter {
            name: "level",
            low: 0.0,
            high: 1.0,
            unit: "the low one: 0 upper, 1 lower",
            logarithmic: false,
            whole: true,
        },
        Parameter { name: "low", low: 90.0, high: 100.0, unit: "°F", logarithmic: false, whole: false },
        Parameter { name: "high", low: 120.0, high: 130.0, unit: "°F", logarithmic: false, whole: false },
    ],
    fits,
    apply,
    remedies: &[Remedy::SetDials],
    scope: Scope::Words,
    tempting: PartKind::LowerElement,
};

fn fits(_: &Home) -> bool {
    true
}

fn apply(parameters: &Parameters, home: &mut Home) {
    let low = level_of(parameters);
    for level in [Level::Upper, Level::Lower] {
        let name = if level == low { "low" } else { "high" };
        home.plant.thermostats[level.index()].dial = Temperature::fahrenheit(parameter(parameters, name));
    }
}
