//! A heat trap's ball stuck in the outlet nipple. The cold side runs strong and the hot side weak at every tap.

use quantity::Tag;

use super::{Fault, FaultId, Parameter, Parameters, PartKind, Remedy, Scope, Stages, Way, parameter, weight};
use crate::home::Home;

/// The catalogue entry.
pub const FAULT: Fault = Fault {
    id: FaultId::F58,
    module: module_path!(),
    weight: weight(10.0),
    parameters: &[Parameter::between(
        "free",
        [0.06, 0.15],
        "of the bore",
        Tag::Model("a ball on its seat, or a nipple scaled up"),
    )],
    stages: Stages::Along(Way::Shrinks("free")),
    fits,
    apply,
    remedies: &[Remedy::Replace(PartKind::Nipples)],
    scope: Scope::Piping,
    tempting: PartKind::Heater,
};

fn fits(_: &Home) -> bool {
    true
}

fn apply(parameters: &Parameters, home: &mut Home) {
    home.plant.plumbing.traps.outlet_free = parameter(parameters, "free");
}
