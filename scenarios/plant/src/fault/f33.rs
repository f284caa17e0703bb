//! A thermostat that does not lie flat on the shell. Its body lags behind the water, so it opens late: the water
//! is far hotter than the dial.

use quantity::Tag;

use super::{
    Fault, FaultId, Parameter, Parameters, PartKind, Remedy, Scope, Stages, Way, level_in, parameter, weight,
};
use crate::home::Home;
use crate::parts::Level;

/// The catalogue entry.
pub const FAULT: Fault = Fault {
    id: FaultId::F33,
    module: module_path!(),
    weight: weight(12.0),
    parameters: &[
        Parameter::either("level", "0 upper, 1 lower"),
        Parameter::between(
            "grip",
            [0.0, 0.2],
            "of its plate touches",
            Tag::Model("off its clip, or nearly so"),
        ),
    ],
    stages: Stages::Along(Way::Shrinks("grip")),
    fits,
    apply,
    remedies: &[Remedy::Seat(Level::Upper), Remedy::Seat(Level::Lower)],
    scope: Scope::HeaterParts,
    tempting: PartKind::Limit,
};

/// A board has sensors in their place.
fn fits(home: &Home) -> bool {
    home.plant.plate.layout.has_thermostats()
}

fn apply(parameters: &Parameters, home: &mut Home) {
    let thermostat = &mut home.plant.thermostats[level_in(parameters, home).index()];
    thermostat.grip = parameter(parameters, "grip");
    thermostat.seated = thermostat.grip > 0.0;
}
