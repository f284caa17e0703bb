//! A coil broken where its ends still touch. Cool it is whole and heats; once the water beside it is warm the ends part,
//! the current is gone, and it comes back only when cold water has come in. An ohmmeter on a cooled element finds nothing.

use quantity::{Tag, Temperature};

use super::{
    Fault, FaultId, Parameter, Parameters, PartKind, Remedy, Scope, Stages, Way, level_in, parameter, weight,
};
use crate::home::Home;
use crate::parts::{Level, Parting};

/// The catalogue entry.
pub const FAULT: Fault = Fault {
    id: FaultId::F76,
    module: module_path!(),
    weight: weight(5.0),
    parameters: &[
        Parameter::either("level", "0 upper, 1 lower"),
        Parameter::between(
            "parts",
            [88.0, 102.0],
            "°F",
            Tag::Model("warm enough to heat for a while, too cool for the house"),
        ),
    ],
    stages: Stages::Along(Way::Shrinks("parts")),
    fits,
    apply,
    remedies: &[Remedy::Replace(PartKind::UpperElement), Remedy::Replace(PartKind::LowerElement)],
    scope: Scope::HeaterParts,
    tempting: PartKind::LowerThermostat,
};

fn fits(home: &Home) -> bool {
    home.plant.plate.has(Level::Lower)
}

fn apply(parameters: &Parameters, home: &mut Home) {
    let at = Temperature::fahrenheit(parameter(parameters, "parts"));
    home.plant.elements[level_in(parameters, home).index()].parting = Some(Parting::of(at));
}
