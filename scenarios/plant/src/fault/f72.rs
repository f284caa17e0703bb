//! A thermostat whose differential has grown. It opens at its dial and closes again only when the water has long
//! been lukewarm.

use quantity::{Kelvins, Tag};

use super::{
    Fault, FaultId, Parameter, Parameters, PartKind, Remedy, Scope, Stages, level_in, parameter, weight,
};
use crate::home::Home;

/// The catalogue entry.
pub const FAULT: Fault = Fault {
    id: FaultId::F72,
    module: module_path!(),
    weight: weight(8.0),
    parameters: &[
        Parameter::either("level", "0 upper, 1 lower"),
        Parameter::between(
            "differential",
            [35.0, 50.0],
            "°F",
            Tag::Model("beyond the 25 to 30 °F from which a cut-in is called late"),
        ),
    ],
    // Drawn far too wide only; within that a bucket tells more of the day than of the width.
    stages: Stages::Sudden,
    fits,
    apply,
    remedies: &[Remedy::Replace(PartKind::UpperThermostat), Remedy::Replace(PartKind::LowerThermostat)],
    scope: Scope::HeaterParts,
    tempting: PartKind::LowerElement,
};

/// A board decides by numbers.
fn fits(home: &Home) -> bool {
    home.plant.plate.layout.has_thermostats()
}

fn apply(parameters: &Parameters, home: &mut Home) {
    let differential = Kelvins::fahrenheit(parameter(parameters, "differential"));
    home.plant.thermostats[level_in(parameters, home).index()].differential = differential;
}
