//! A burnt splice in the heater's junction box. It drops volts and heats while current flows, smells, and
//! in the end carries nothing. While it still conducts it takes 1 to 3 V, up to some 60 W; a worse one burns
//! off within minutes of full current (`controls::joint`).

use quantity::{Ohms, Tag};

use super::{
    Fault, FaultId, Parameter, Parameters, PartKind, Remedy, Scope, Stages, Way, chosen, parameter, weight,
};
use crate::home::Home;
use crate::parts::BURNT_OFF;
use crate::points::End;
use crate::wire::Wire;

/// The catalogue entry.
pub const FAULT: Fault = Fault {
    id: FaultId::F23,
    module: module_path!(),
    weight: weight(30.0),
    parameters: &[
        Parameter::either("leg", "0 first, 1 second"),
        Parameter::either("open", "0 still conducts, 1 burnt off"),
        Parameter::spread(
            "ohms",
            [0.07, 0.11],
            "ohm",
            Tag::Computed("1.3 to 2.1 V and 25 to 39 W at 18.75 A: hot, and not yet burnt off"),
        ),
    ],
    stages: Stages::Until(Way::Grows("ohms"), "open"),
    fits,
    apply,
    remedies: &[
        Remedy::Remake(&[End { wire: Wire::CableA, side: 1 }]),
        Remedy::Remake(&[End { wire: Wire::CableB, side: 1 }]),
    ],
    scope: Scope::HeaterParts,
    tempting: PartKind::UpperThermostat,
};

fn fits(home: &Home) -> bool {
    !home.plant.wiring.hot_neutral && !home.plant.wiring.boxed
}

fn apply(parameters: &Parameters, home: &mut Home) {
    let wire = if chosen(parameters, "leg") { Wire::CableB } else { Wire::CableA };
    let burnt_off = chosen(parameters, "open");
    let joint = home.plant.wiring.joint_mut(End { wire, side: 1 });
    joint.resistance = if burnt_off { BURNT_OFF } else { Ohms(parameter(parameters, "ohms")) };
    joint.charred = true;
    joint.torqued = false;
}
