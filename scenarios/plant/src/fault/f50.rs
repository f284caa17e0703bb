//! An element's gasket leaks on a rusty seat. Water shows at the flange behind the cover.

use quantity::Tag;

use super::{
    Fault, FaultId, Parameter, Parameters, PartKind, Remedy, Scope, Stages, Way, level_in, parameter, weight,
};
use crate::home::Home;

/// The catalogue entry.
pub const FAULT: Fault = Fault {
    id: FaultId::F50,
    module: module_path!(),
    weight: weight(20.0),
    parameters: &[
        Parameter::either("level", "0 upper, 1 lower"),
        Parameter::spread(
            "diameter",
            [0.0001, 0.0003],
            "m",
            Tag::Model("a drip to a trickle at house pressure"),
        ),
    ],
    stages: Stages::Along(Way::Grows("diameter")),
    fits,
    apply,
    remedies: &[Remedy::Replace(PartKind::UpperGasket), Remedy::Replace(PartKind::LowerGasket)],
    scope: Scope::HeaterParts,
    tempting: PartKind::Heater,
};

fn fits(_: &Home) -> bool {
    true
}

fn apply(parameters: &Parameters, home: &mut Home) {
    let gasket = &mut home.plant.elements[level_in(parameters, home).index()].gasket;
    gasket.leak_diameter = parameter(parameters, "diameter");
    gasket.seat_dirty = true;
}
