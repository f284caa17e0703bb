//! One fixture's limit stop lets cold water into its hottest setting. That fixture is lukewarm and all others are
//! hot.

use quantity::Tag;

use super::{Fault, FaultId, Parameter, Parameters, PartKind, Remedy, Scope, Stages, parameter, weight};
use crate::home::Home;
use crate::waterworks::Tap;

/// The catalogue entry.
pub const FAULT: Fault = Fault {
    id: FaultId::F74,
    module: module_path!(),
    weight: weight(25.0),
    parameters: &[Parameter::between(
        "stop",
        [0.5, 0.9],
        "of the hot side's opening",
        Tag::Model("95 °F and less from 120 °F"),
    )],
    // Somebody set it.
    stages: Stages::Sudden,
    fits,
    apply,
    remedies: &[Remedy::Replace(PartKind::Cartridge)],
    scope: Scope::Piping,
    tempting: PartKind::UpperThermostat,
};

fn fits(_: &Home) -> bool {
    true
}

fn apply(parameters: &Parameters, home: &mut Home) {
    home.plant.plumbing.fixtures[Tap::Shower.index()].limit_stop = parameter(parameters, "stop");
}
