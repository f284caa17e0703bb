//! An element's gasket leaks on a rusty seat. Water shows at the flange behind the cover.

use quantity::Tag;

use super::{Fault, FaultId, Parameter, Parameters, PartKind, Remedy, Scope, level_of, parameter};
use crate::home::Home;

/// The catalogue entry.
pub const FAULT: Fault = Fault {
    id: FaultId::F50,
    weight: 20.0,
    tag: Tag::CommonPractice,
    parameters: &[
        Parameter {
            name: "level",
            low: 0.0,
            high: 1.0,
            unit: "0 upper, 1 lower",
            logarithmic: false,
            whole: true,
        },
        Parameter { name: "diameter", low: 0.0001, high: 0.0003, unit: "m", logarithmic: true, whole: false },
    ],
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
    let gasket = &mut home.plant.elements[level_of(parameters).index()].gasket;
    gasket.leak_diameter = parameter(parameters, "diameter");
    gasket.seat_dirty = true;
}
