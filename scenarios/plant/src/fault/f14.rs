//! An element grounded near one end of its coil. At the permanent end the breaker trips even when
//! satisfied, at the switched end when the element is called.

use quantity::{Ohms, Tag};

use super::{Fault, FaultId, Parameter, Parameters, PartKind, Remedy, Scope, level_of, parameter};
use crate::home::Home;
use crate::parts::SheathFault;

/// The catalogue entry.
pub const FAULT: Fault = Fault {
    id: FaultId::F14,
    weight: 25.0,
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
        Parameter {
            name: "end",
            low: 0.0,
            high: 1.0,
            unit: "0 switched, 1 permanent",
            logarithmic: false,
            whole: true,
        },
        Parameter {
            name: "depth",
            low: 0.005,
            high: 0.06,
            unit: "of the coil from that end",
            logarithmic: false,
            whole: false,
        },
        Parameter { name: "ohms", low: 0.02, high: 0.2, unit: "ohm", logarithmic: true, whole: false },
    ],
    fits,
    apply,
    remedies: &[Remedy::Replace(PartKind::UpperElement), Remedy::Replace(PartKind::LowerElement)],
    scope: Scope::HeaterParts,
    tempting: PartKind::Breaker,
};

fn fits(_: &Home) -> bool {
    true
}

fn apply(parameters: &Parameters, home: &mut Home) {
    let depth = parameter(parameters, "depth");
    let fraction = if parameter(parameters, "end") >= 0.5 { 1.0 - depth } else { depth };
    let resistance = Ohms(parameter(parameters, "ohms"));
    home.plant.elements[level_of(parameters).index()].leak = Some(SheathFault { fraction, resistance });
}
