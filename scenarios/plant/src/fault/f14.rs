//! An element grounded near one end of its coil. At the permanent end the breaker trips even when
//! satisfied, at the switched end when the element is called.

use quantity::{Ohms, Tag};

use super::{
    Fault, FaultId, Parameter, Parameters, PartKind, Remedy, Scope, Stages, chosen, level_in, parameter,
    weight,
};
use crate::home::Home;
use crate::parts::SheathFault;

/// The catalogue entry.
pub const FAULT: Fault = Fault {
    id: FaultId::F14,
    module: module_path!(),
    weight: weight(25.0),
    parameters: &[
        Parameter::either("level", "0 upper, 1 lower"),
        Parameter::either("end", "0 switched, 1 permanent"),
        Parameter::between(
            "depth",
            [0.005, 0.06],
            "of the coil from that end",
            Tag::Model("close enough to an end that the breaker trips"),
        ),
        Parameter::spread("ohms", [0.02, 0.2], "ohm", Tag::Model("a coil welded to its sheath")),
    ],
    // Drawn grounded hard only; its beginning, a soft leak, is F75.
    stages: Stages::Sudden,
    fits,
    apply,
    remedies: &[Remedy::Replace(PartKind::UpperElement), Remedy::Replace(PartKind::LowerElement)],
    scope: Scope::HeaterParts,
    tempting: PartKind::Breaker,
};

fn fits(home: &Home) -> bool {
    !home.plant.wiring.hot_neutral
}

fn apply(parameters: &Parameters, home: &mut Home) {
    let depth = parameter(parameters, "depth");
    let fraction = if chosen(parameters, "end") { 1.0 - depth } else { depth };
    let resistance = Ohms(parameter(parameters, "ohms"));
    home.plant.elements[level_in(parameters, home).index()].leak = Some(SheathFault { fraction, resistance });
}
