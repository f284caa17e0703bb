//! Sediment over the bottom and a crust on the lower element. Water trapped under it boils while the element works and
//! pops; the drain runs grey and slowly. The coil is good by every reading, and will not be for long.

use quantity::{Constant, Metres, Tag, Volume};

use super::{Fault, FaultId, Parameter, Parameters, PartKind, Remedy, Scope, Stages, parameter, weight};
use crate::home::Home;
use crate::parts::{Level, Scale};

quantity::constants! {
    /// Millimetres in a metre.
    const MILLI: Constant = Constant::new("millimetres in a metre", 1000.0, "", Tag::Computed("the prefix: a thousand to the metre"));
}

/// The catalogue entry.
pub const FAULT: Fault = Fault {
    id: FaultId::F41,
    module: module_path!(),
    weight: weight(35.0),
    parameters: &[
        Parameter::between("litres", [1.5, 4.0], "L", Tag::Model("half an inch to an inch over the bottom")),
        Parameter::between(
            "crust",
            [1.5, 3.0],
            "mm",
            Tag::Model("an element that has seen hard water for years"),
        ),
    ],
    // Grit and popping are there at every thickness drawn, and nothing measures more of them; what it comes to, a coil burnt
    // out under its crust, is F01 as well, and dealt as what follows.
    stages: Stages::Sudden,
    fits,
    apply,
    remedies: &[Remedy::FlushAndReplace(PartKind::LowerElement)],
    scope: Scope::Piping,
    tempting: PartKind::UpperThermostat,
};

fn fits(home: &Home) -> bool {
    home.plant.plate.has(Level::Lower)
}

fn apply(parameters: &Parameters, home: &mut Home) {
    let plant = &mut home.plant;
    plant.vessel.sediment = Volume::litres(parameter(parameters, "litres"));
    let crust = Scale::of(Metres(parameter(parameters, "crust") / MILLI.get()));
    plant.elements[Level::Lower.index()].scale = crust;
}
