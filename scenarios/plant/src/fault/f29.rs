//! An element of another power than the plate's, or made for a higher voltage, put in by somebody before. Everything
//! works, slowly; only the stamp, the ohms and the amperes say why.

use quantity::{Constant, Tag, Volts, Watts};

use super::{
    Fault, FaultId, Parameter, Parameters, PartKind, Remedy, Scope, Stages, chosen, level_in, parameter,
    weight,
};
use crate::home::Home;

quantity::constants! {
    /// Ratings of elements come in steps.
    const STEP: Constant = Constant::new("steps of an element's rating", 250.0, "W", Tag::CommonPractice);
    /// Voltages elements are made for.
    const MADE_FOR: Constant<[f64; 5]> = Constant::new("voltages elements are made for", [120.0, 208.0, 240.0, 277.0, 480.0], "V", Tag::CommonPractice);
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
        Parameter::either("volts", "0 for fewer watts, 1 for a higher voltage"),
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
    let rating = home.plant.plate.element;
    let stamp = &mut home.plant.elements[level.index()].stamp;
    if chosen(parameters, "volts") {
        // As many watts as the plate says, but from more volts than it gets.
        let higher = MADE_FOR.get().into_iter().find(|volts| *volts > rating.volts.get());
        stamp.volts = higher.map_or(stamp.volts, Volts);
        return;
    }
    // A stamp is a round number.
    let watts = (rating.watts.get() * parameter(parameters, "share") / STEP.get()).round() * STEP.get();
    stamp.watts = Watts(watts);
}
