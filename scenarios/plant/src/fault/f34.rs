//! Both dials set low. The water is lukewarm, as it was told to be.

use quantity::{Tag, Temperature};

use super::{Fault, FaultId, Parameter, Parameters, PartKind, Remedy, Scope, Stages, parameter, weight};
use crate::home::Home;

/// The catalogue entry.
pub const FAULT: Fault = Fault {
    id: FaultId::F34,
    module: module_path!(),
    weight: weight(25.0),
    parameters: &[Parameter::between(
        "dial",
        [90.0, 100.0],
        "°F",
        Tag::Model("the lower marks of a dial of 90 to 150 °F"),
    )],
    // Somebody turned them.
    stages: Stages::Sudden,
    fits,
    apply,
    remedies: &[Remedy::SetDials],
    scope: Scope::Words,
    tempting: PartKind::UpperThermostat,
};

fn fits(_: &Home) -> bool {
    true
}

fn apply(parameters: &Parameters, home: &mut Home) {
    let dial = Temperature::fahrenheit(parameter(parameters, "dial"));
    home.plant.thermostats.iter_mut().for_each(|t| t.dial = dial);
}
