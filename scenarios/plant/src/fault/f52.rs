//! A nipple or its union has corroded through on top. Water runs down the jacket; wiped dry, the joint wets first and
//! the bottom rim last.

use quantity::Tag;

use super::{Fault, FaultId, Parameter, Parameters, PartKind, Remedy, Scope, Stages, Way, parameter, weight};
use crate::home::Home;

/// The catalogue entry.
pub const FAULT: Fault = Fault {
    id: FaultId::F52,
    module: module_path!(),
    weight: weight(25.0),
    parameters: &[Parameter::spread("diameter", [0.0001, 0.0003], "m", Tag::Model("a weep to a dribble"))],
    stages: Stages::Along(Way::Grows("diameter")),
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
    home.plant.plumbing.nipple_leak = parameter(parameters, "diameter");
}
