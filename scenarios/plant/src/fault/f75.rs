//! Insulation of an element cracked: a soft leak of kilohms. It neither heats the tank nor trips anything, and with a
//! sound equipment ground nobody feels it: only an insulation test finds it.

use quantity::{Ohms, Tag};

use super::{
    Fault, FaultId, Parameter, Parameters, PartKind, Remedy, Scope, Stages, Way, level_in, parameter, weight,
};
use crate::home::Home;
use crate::parts::SheathFault;

/// The catalogue entry.
pub const FAULT: Fault = Fault {
    id: FaultId::F75,
    module: module_path!(),
    weight: weight(6.0),
    parameters: &[
        Parameter::either("level", "0 upper, 1 lower"),
        Parameter::between(
            "fraction",
            [0.1, 0.9],
            "of the coil from its switched end",
            Tag::Model("anywhere"),
        ),
        Parameter::spread(
            "ohms",
            [5e3, 5e5],
            "ohm",
            Tag::Computed("120 V through 5 kilohms is 24 mA and 3 W; through 500 kilohms 0.2 mA"),
        ),
    ],
    stages: Stages::Along(Way::Shrinks("ohms")),
    fits,
    apply,
    remedies: &[Remedy::Replace(PartKind::UpperElement), Remedy::Replace(PartKind::LowerElement)],
    scope: Scope::HeaterParts,
    tempting: PartKind::LowerThermostat,
};

fn fits(home: &Home) -> bool {
    !home.plant.wiring.hot_neutral
}

fn apply(parameters: &Parameters, home: &mut Home) {
    let level = level_in(parameters, home);
    home.plant.elements[level.index()].leak = Some(SheathFault {
        fraction: parameter(parameters, "fraction"),
        resistance: Ohms(parameter(parameters, "ohms")),
    });
}
