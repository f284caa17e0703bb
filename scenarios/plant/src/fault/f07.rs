//! A limit grown weak. It opens at ordinary hot water, clean and cool around its screws, again and again.

use quantity::{Tag, Temperature};

use super::{Fault, FaultId, Parameter, Parameters, PartKind, Remedy, Scope, Stages, parameter, weight};
use crate::home::Home;

/// The catalogue entry.
pub const FAULT: Fault = Fault {
    id: FaultId::F07,
    module: module_path!(),
    weight: weight(20.0),
    parameters: &[Parameter::between(
        "trip",
        [116.0, 121.0],
        "°F",
        Tag::Model("at the dial or just below it: it trips before the thermostat is satisfied"),
    )],
    // Drawn within 5 °F, at its dial or just below: each trips at the same heating-up.
    stages: Stages::Sudden,
    fits,
    apply,
    remedies: &[Remedy::Replace(PartKind::Limit)],
    scope: Scope::HeaterParts,
    tempting: PartKind::UpperElement,
};

fn fits(_: &Home) -> bool {
    true
}

fn apply(parameters: &Parameters, home: &mut Home) {
    home.plant.limit.trip = Temperature::fahrenheit(parameter(parameters, "trip"));
}
