//! An element of another power than the plate's, put in by somebody before. Everything works, slowly; only the
//! stamp, the ohms and the amperes say why.

use quantity::{Constant, Tag, Watts};

use super::{
    Fault, FaultId, Parameter, Parameters, PartKind, Remedy, Scope, Stages, level_in, parameter, weight,
};
use crate::home::Home;

quantity::constants! {
    /// Ratings of elements come in steps.
    const STEP: Constant = Constant::new("steps of an element's rating", 250.0, "W", Tag::CommonPractice);
}

/// The catalogue entry.
pub const FAULT: Fault = Fault {
    id: FaultId::F29,
    module: module_path!(),
    weight: weight(4.0),
    parameters: &[
        Parameter::either("level", "0 upper, 1 lower"),
        Parameter::between(
            "share",
            [0.30, 0.50],
            "of the plate's watts",
            Tag::Model("1500 to 2000 W where the plate says 4500: elements of a small heater"),
        ),
    ],
    // Somebody fitted it.
    stages: Stages::Sudden,
    fits,
    apply,
    remedies: &[Remedy::Replace(PartKind::UpperElement), Remedy::Replace(PartKind::LowerElement)],
    scope: Scope::HeaterParts,
    tempting: PartKind::UpperThermostat,
};

fn fits(_: &Home) -> bool {
    true
}

fn apply(parameters: &Parameters, home: &mut Home) {
    let level = level_in(parameters, home);
    let plate = home.plant.plate.element.watts.get();
    // A stamp is a round number.
    let watts = (plate * parameter(parameters, "share") / STEP.get()).round() * STEP.get();
    home.plant.elements[level.index()].stamp.watts = Watts(watts);
}
