//! Cold water crosses over into the hot line through one fixture's cartridge. Every hot tap is lukewarm though the
//! tank is hot; with the heater's cold valve shut an open hot tap keeps running.

use quantity::Tag;

use super::{Fault, FaultId, Parameter, Parameters, PartKind, Remedy, Scope, Stages, Way, parameter, weight};
use crate::home::Home;
use crate::waterworks::TAPS;

/// The catalogue entry.
pub const FAULT: Fault = Fault {
    id: FaultId::F38,
    module: module_path!(),
    weight: weight(20.0),
    parameters: &[
        Parameter {
            whole: true,
            ..Parameter::between(
                "tap",
                [0.0, 3.0],
                "0 laundry, 1 kitchen, 2 bath, 3 shower",
                Tag::Model("any fixture"),
            )
        },
        Parameter::spread("diameter", [0.003, 0.006], "m", Tag::Model("a washer gone from a single lever")),
    ],
    stages: Stages::Along(Way::Grows("diameter")),
    fits,
    apply,
    remedies: &[Remedy::Replace(PartKind::Cartridge)],
    scope: Scope::Piping,
    tempting: PartKind::UpperElement,
};

fn fits(_: &Home) -> bool {
    true
}

fn apply(parameters: &Parameters, home: &mut Home) {
    let at = (parameter(parameters, "tap").round() as usize).min(TAPS - 1);
    home.plant.plumbing.fixtures[at].crossover = parameter(parameters, "diameter");
}
