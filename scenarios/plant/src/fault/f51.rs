//! The drain valve drips from its spout, its seat worn, or held open by grit that clogs it as well: then little comes out
//! of it when it is open. Nothing else is wet.

use quantity::Tag;

use super::{
    Fault, FaultId, Parameter, Parameters, PartKind, Remedy, Scope, Stages, Way, chosen, parameter, weight,
};
use crate::home::Home;

/// The catalogue entry.
pub const FAULT: Fault = Fault {
    id: FaultId::F51,
    module: module_path!(),
    weight: weight(15.0),
    parameters: &[
        Parameter::spread("diameter", [0.0001, 0.0003], "m", Tag::Model("a drip to a dribble")),
        Parameter::either("grit", "0 seat worn, 1 grit on it"),
        Parameter::between(
            "clogged",
            [0.6, 0.9],
            "of its bore",
            Tag::Model("a third of the flow or less, not nothing"),
        ),
    ],
    stages: Stages::Along(Way::Grows("diameter")),
    fits,
    apply,
    remedies: &[Remedy::Replace(PartKind::DrainValve)],
    scope: Scope::Piping,
    tempting: PartKind::Heater,
};

fn fits(_: &Home) -> bool {
    true
}

fn apply(parameters: &Parameters, home: &mut Home) {
    home.plant.plumbing.drain_drip = parameter(parameters, "diameter");
    if chosen(parameters, "grit") {
        home.plant.plumbing.drain_grit = parameter(parameters, "clogged");
    }
}
