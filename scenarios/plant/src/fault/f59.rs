//! Gas in the lines of a house that stood empty for weeks: the anode's hydrogen. The taps spit when the people come
//! home; it clears by itself, and it burns.

use quantity::{Seconds, Tag};

use super::{Fault, FaultId, Parameter, Parameters, PartKind, Remedy, Scope, Stages, parameter, weight};
use crate::home::Home;

/// The catalogue entry.
pub const FAULT: Fault = Fault {
    id: FaultId::F59,
    module: module_path!(),
    weight: weight(4.0),
    parameters: &[Parameter::between("away", [16.0, 30.0], "d", Tag::Invented("a journey"))],
    // Clears by itself; its number is the length of a journey.
    stages: Stages::Sudden,
    fits,
    apply,
    remedies: &[Remedy::Vent],
    scope: Scope::Words,
    tempting: PartKind::Anode,
};

fn fits(_: &Home) -> bool {
    true
}

fn apply(parameters: &Parameters, home: &mut Home) {
    let days = parameter(parameters, "away");
    home.away = days as u16;
    home.plant.rest(Seconds::days(days));
}
