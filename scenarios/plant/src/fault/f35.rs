//! Both dials set high. The water scalds, and nothing is broken.

use quantity::{Tag, Temperature};

use super::{Fault, FaultId, Parameter, Parameters, PartKind, Remedy, Scope, Stages, parameter, weight};
use crate::home::Home;

/// The catalogue entry.
pub const FAULT: Fault = Fault {
    id: FaultId::F35,
    module: module_path!(),
    weight: weight(12.0),
    parameters: &[Parameter::between(
        "dial",
        [140.0, 150.0],
        "°F",
        Tag::Model("the upper marks of a dial of 90 to 150 °F"),
    )],
    // Somebody turned them.
    stages: Stages::Sudden,
    fits,
    apply,
    remedies: &[Remedy::SetDials],
    scope: Scope::Words,
    tempting: PartKind::Limit,
};

fn fits(_: &Home) -> bool {
    true
}

fn apply(parameters: &Parameters, home: &mut Home) {
    let dial = Temperature::fahrenheit(parameter(parameters, "dial"));
    home.plant.thermostats.iter_mut().for_each(|t| t.dial = dial);
}
