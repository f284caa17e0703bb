//! A leak of the hot line behind a wall or under the slab. Hot water runs day and night where nobody sees it: it runs
//! out, the bill rises, and the water meter turns with every tap shut.

use quantity::Tag;

use super::{Fault, FaultId, Parameter, Parameters, PartKind, Remedy, Scope, Stages, Way, parameter, weight};
use crate::home::Home;

/// The catalogue entry.
pub const FAULT: Fault = Fault {
    id: FaultId::F43,
    module: module_path!(),
    weight: weight(12.0),
    parameters: &[Parameter::spread(
        "diameter",
        [0.0015, 0.003],
        "m",
        Tag::Model("a pinhole: a third to more than one gpm"),
    )],
    stages: Stages::Along(Way::Grows("diameter")),
    fits,
    apply,
    remedies: &[Remedy::Replace(PartKind::HotLine)],
    scope: Scope::Piping,
    tempting: PartKind::UpperThermostat,
};

fn fits(_: &Home) -> bool {
    true
}

fn apply(parameters: &Parameters, home: &mut Home) {
    home.plant.plumbing.hot_leak = parameter(parameters, "diameter");
}
