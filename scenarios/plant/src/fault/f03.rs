//! Tank shell corroded through near the bottom. Water creeps out under the jacket while every fitting stays
//! dry; with both valves shut the pressure falls by itself. The tank cannot be mended.

use quantity::Tag;

use super::{Fault, FaultId, Parameter, Parameters, PartKind, Remedy, Scope, Stages, Way, parameter, weight};
use crate::home::Home;

/// The catalogue entry.
pub const FAULT: Fault = Fault {
    id: FaultId::F03,
    module: module_path!(),
    weight: weight(90.0),
    parameters: &[Parameter::spread(
        "diameter",
        [0.0001, 0.0004],
        "m",
        Tag::Model("a seep of some litres a day at house pressure, not a jet"),
    )],
    stages: Stages::Along(Way::Grows("diameter")),
    fits,
    apply,
    remedies: &[Remedy::Replace(PartKind::Heater)],
    scope: Scope::Piping,
    tempting: PartKind::LowerGasket,
};

fn fits(_: &Home) -> bool {
    true
}

fn apply(parameters: &Parameters, home: &mut Home) {
    home.plant.vessel.shell_hole = parameter(parameters, "diameter");
}
