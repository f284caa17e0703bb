//! Dials far apart. With the upper one low the top is only lukewarm after a long draw; with the lower one
//! low most of the tank is.

use quantity::{Tag, Temperature};

use super::{
    Fault, FaultId, Parameter, Parameters, PartKind, Remedy, Scope, Stages, level_of, parameter, weight,
};
use crate::home::Home;
use crate::parts::Level;

/// The catalogue entry.
pub const FAULT: Fault = Fault {
    id: FaultId::F36,
    module: module_path!(),
    weight: weight(8.0),
    parameters: &[
        Parameter::either("level", "the low one: 0 upper, 1 lower"),
        Parameter::between(
            "low",
            [90.0, 100.0],
            "°F",
            Tag::Model("the lower marks of a dial of 90 to 150 °F"),
        ),
        Parameter::between("high", [120.0, 130.0], "°F", Tag::Model("about the factory setting")),
    ],
    // Somebody turned them.
    stages: Stages::Sudden,
    fits,
    apply,
    remedies: &[Remedy::SetDials],
    scope: Scope::Words,
    tempting: PartKind::LowerElement,
};

fn fits(home: &Home) -> bool {
    home.plant.plate.has(Level::Lower)
}

fn apply(parameters: &Parameters, home: &mut Home) {
    let low = level_of(parameters);
    for level in [Level::Upper, Level::Lower] {
        let name = if level == low { "low" } else { "high" };
        home.plant.thermostats[level.index()].dial = Temperature::fahrenheit(parameter(parameters, name));
    }
}
