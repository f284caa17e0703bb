//! Turns of a coil shorted. Its resistance falls and its current rises: it heats well, draws more than its plate
//! says, and brings the breaker to its limit in minutes to hours.

use quantity::Tag;

use super::{
    Fault, FaultId, Parameter, Parameters, PartKind, Remedy, Scope, Stages, level_in, parameter, weight,
};
use crate::home::Home;

/// The catalogue entry.
pub const FAULT: Fault = Fault {
    id: FaultId::F15,
    module: module_path!(),
    weight: weight(5.0),
    parameters: &[
        Parameter::either("level", "0 upper, 1 lower"),
        Parameter::between(
            "share",
            [0.50, 0.60],
            "of the coil left",
            Tag::Model("31 to 38 A of a 4500 W element: a 30 A breaker carries it for minutes to hours"),
        ),
    ],
    // Turns touch at once; where the breaker is found tripped, no reading tells how many.
    stages: Stages::Sudden,
    fits,
    apply,
    remedies: &[Remedy::Replace(PartKind::UpperElement), Remedy::Replace(PartKind::LowerElement)],
    scope: Scope::HeaterParts,
    tempting: PartKind::Breaker,
};

/// On one element the breaker has room for it and nobody would notice.
fn fits(home: &Home) -> bool {
    !home.plant.wiring.hot_neutral
}

fn apply(parameters: &Parameters, home: &mut Home) {
    home.plant.elements[level_in(parameters, home).index()].tolerance = parameter(parameters, "share");
}
