//! A film on a thermostat's contact. The blade snaps over as it should, and at some of its closings nothing flows: the
//! water stays cold until the blade has moved on a little, or somebody turns the dial. Found open, it may be found whole
//! the next time.

use quantity::Tag;

use super::{
    Fault, FaultId, Parameter, Parameters, PartKind, Remedy, Scope, Stages, level_in, parameter, weight,
};
use crate::home::Home;
use crate::parts::Fickle;

/// The catalogue entry.
pub const FAULT: Fault = Fault {
    id: FaultId::F77,
    module: module_path!(),
    weight: weight(6.0),
    parameters: &[
        Parameter::either("level", "0 upper, 1 lower"),
        Parameter::between(
            "share",
            [0.55, 0.8],
            "of closings",
            Tag::Model("often enough to be called for, not always"),
        ),
    ],
    // One closing is chance: how often it misses, a visit hardly tells.
    stages: Stages::Sudden,
    fits,
    apply,
    remedies: &[Remedy::Replace(PartKind::UpperThermostat), Remedy::Replace(PartKind::LowerThermostat)],
    scope: Scope::HeaterParts,
    tempting: PartKind::LowerElement,
};

/// A board closes relays.
fn fits(home: &Home) -> bool {
    home.plant.plate.layout.has_thermostats()
}

fn apply(parameters: &Parameters, home: &mut Home) {
    let share = parameter(parameters, "share");
    home.plant.thermostats[level_in(parameters, home).index()].fickle = Some(Fickle::of(share));
}
