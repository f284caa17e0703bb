//! Both dials set high. The water scalds, and nothing is broken.

use quantity::{Tag, Temperature};

use super::{Fault, FaultId, Parameter, Parameters, PartKind, Remedy, Scope, parameter};
use crate::home::Home;

/// The catalogue entry.
pub const FAULT: Fault = Fault {
    id: FaultId::F35,
    weight: 12.0,
    tag: Tag::CommonPractice,
    parameters: &[Parameter {
        name: "dial",
        low: 140.0,
        high: 150.0,
        unit: "°F",
        logarithmic: false,
        whole: false,
    }],
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
