//! The mixing valve at the heater has seized with too much cold. The tank is hot and every tap lukewarm.

use quantity::{Constant, Tag, Temperature};

use super::{Fault, FaultId, Parameter, Parameters, PartKind, Remedy, Scope, Stages, Way, parameter, weight};
use crate::home::Home;
use crate::waterworks::MixingValve;

quantity::constants! {
    /// What the valve was set to deliver.
    const SET: Constant<Temperature> =
        Constant::of("setting of a mixing valve", Temperature::fahrenheit(120.0), Tag::CommonPractice);
}

/// The catalogue entry.
pub const FAULT: Fault = Fault {
    id: FaultId::F39,
    module: module_path!(),
    weight: weight(12.0),
    parameters: &[Parameter::between(
        "hot",
        [0.45, 0.60],
        "of the mix from the tank",
        Tag::Model("85 to 97 °F from 120 °F and a cold main"),
    )],
    stages: Stages::Along(Way::Shrinks("hot")),
    fits,
    apply,
    remedies: &[Remedy::Replace(PartKind::MixingValve)],
    scope: Scope::Piping,
    tempting: PartKind::UpperThermostat,
};

fn fits(_: &Home) -> bool {
    true
}

fn apply(parameters: &Parameters, home: &mut Home) {
    let seized = Some(parameter(parameters, "hot"));
    home.plant.plumbing.mixing = Some(MixingValve { set: SET.get(), seized });
}
