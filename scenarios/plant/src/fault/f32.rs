//! A wet compartment. The element's gasket weeps into it, and water bridges a track of old char from a live screw to
//! the shell: the breaker trips, the metal rusts. Dried, with a tight gasket, the track insulates again.

use quantity::{Ohms, Tag};

use super::{
    Fault, FaultId, Parameter, Parameters, PartKind, Remedy, Scope, Stages, level_of, parameter, weight,
};
use crate::home::Home;
use crate::parts::Film;

/// The catalogue entry.
pub const FAULT: Fault = Fault {
    id: FaultId::F32,
    module: module_path!(),
    weight: weight(12.0),
    parameters: &[
        Parameter::either("level", "0 upper, 1 lower"),
        Parameter::spread(
            "diameter",
            [0.0001, 0.0002],
            "m",
            Tag::Model("a weep that stays behind the cover"),
        ),
        Parameter::between(
            "ohms",
            [4.0, 7.0],
            "ohm",
            Tag::Model("a wet track of char that draws more than the breaker bears, with an element at work"),
        ),
    ],
    // Water bridges the track, or it has dried.
    stages: Stages::Sudden,
    fits,
    apply,
    remedies: &[Remedy::DryAndReplace(PartKind::UpperGasket), Remedy::DryAndReplace(PartKind::LowerGasket)],
    scope: Scope::HeaterParts,
    tempting: PartKind::Breaker,
};

/// Two legs and snap controls, whose screws lie open behind the shield.
fn fits(home: &Home) -> bool {
    home.plant.plate.layout == crate::Layout::NonSimultaneous && !home.plant.wiring.hot_neutral
}

fn apply(parameters: &Parameters, home: &mut Home) {
    let level = level_of(parameters).index();
    let gasket = &mut home.plant.elements[level].gasket;
    gasket.leak_diameter = parameter(parameters, "diameter");
    gasket.seat_dirty = true;
    home.plant.films[level] = Film { track: Some(Ohms(parameter(parameters, "ohms"))), dried: false };
}
