//! A burnt splice in the heater's junction box. It drops volts and heats while current flows, smells, and
//! in the end carries nothing. While it still conducts it takes 1 to 3 V, up to some 60 W; a worse one burns
//! off within minutes of full current (`controls::joint`).

use quantity::{Ohms, Tag};

use super::{Fault, FaultId, Parameter, Parameters, PartKind, Remedy, Scope, parameter};
use crate::home::Home;
use crate::parts::BURNT_OFF;
use crate::points::{End, Wire};

/// The catalogue entry.
pub const FAULT: Fault = Fault {
    id: FaultId::F23,
    weight: 30.0,
    tag: Tag::CommonPractice,
    parameters: &[
        Parameter {
            name: "leg",
            low: 0.0,
            high: 1.0,
            unit: "0 first, 1 second",
            logarithmic: false,
            whole: true,
        },
        Parameter {
            name: "open",
            low: 0.0,
            high: 1.0,
            unit: "0 still conducts, 1 burnt off",
            logarithmic: false,
            whole: true,
        },
        Parameter { name: "ohms", low: 0.07, high: 0.11, unit: "ohm", logarithmic: true, whole: false },
    ],
    fits,
    apply,
    remedies: &[
        Remedy::Remake(&[End { wire: Wire::CableA, side: 1 }]),
        Remedy::Remake(&[End { wire: Wire::CableB, side: 1 }]),
    ],
    scope: Scope::HeaterParts,
    tempting: PartKind::UpperThermostat,
};

fn fits(_: &Home) -> bool {
    true
}

fn apply(parameters: &Parameters, home: &mut Home) {
    let wire = if parameter(parameters, "leg") >= 0.5 { Wire::CableB } else { Wire::CableA };
    let burnt_off = parameter(parameters, "open") >= 0.5;
    let joint = home.plant.wiring.joint_mut(End { wire, side: 1 });
    joint.resistance = if burnt_off { BURNT_OFF } else { Ohms(parameter(parameters, "ohms")) };
    joint.charred = true;
    joint.torqued = false;
}
