//! The rod is spent and bare patches of the shell rust: the first hot water of the morning is brown, cold is clear.

use quantity::Tag;

use super::{Fault, FaultId, Parameter, Parameters, PartKind, Remedy, Scope, Stages, parameter, weight};
use crate::home::Home;

/// The catalogue entry.
pub const FAULT: Fault = Fault {
    id: FaultId::F55,
    module: module_path!(),
    weight: weight(12.0),
    parameters: &[
        Parameter::between("left", [0.0, 0.02], "of the rod", Tag::Model("a bare core")),
        Parameter::between("bare", [0.08, 0.2], "m²", Tag::Model("a lining worn through in patches")),
    ],
    // Any patch drawn colours the glass; nobody measures how much.
    stages: Stages::Sudden,
    fits,
    apply,
    remedies: &[Remedy::Replace(PartKind::Anode)],
    scope: Scope::Piping,
    tempting: PartKind::LowerElement,
};

fn fits(_: &Home) -> bool {
    true
}

fn apply(parameters: &Parameters, home: &mut Home) {
    let vessel = &mut home.plant.vessel;
    vessel.anode.left = parameter(parameters, "left");
    vessel.bare = parameter(parameters, "bare");
    home.plant.as_it_stands();
}
