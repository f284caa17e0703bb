//! The equipment ground is off in the junction box and an element leaks a little to its sheath: the tank's metal stands
//! at tens of volts, and whoever holds a tap and the tank feels it. Alone neither would be noticed.

use quantity::{Ohms, Tag};

use super::{
    Fault, FaultId, Parameter, Parameters, PartKind, Remedy, Scope, Stages, Way, level_in, parameter, weight,
};
use crate::home::Home;
use crate::parts::{BURNT_OFF, SheathFault};
use crate::points::End;
use crate::wire::Wire;

/// The catalogue entry.
pub const FAULT: Fault = Fault {
    id: FaultId::F31,
    module: module_path!(),
    weight: weight(4.0),
    parameters: &[
        Parameter::either("level", "0 upper, 1 lower"),
        Parameter::between(
            "fraction",
            [0.6, 0.95],
            "of the coil from its switched end",
            Tag::Model("nearer the end that is always live"),
        ),
        Parameter::spread("ohms", [4e3, 3e4], "ohm", Tag::Model("1 to 5 mA through a hand and a tap")),
    ],
    stages: Stages::Along(Way::Shrinks("ohms")),
    fits,
    apply,
    remedies: &[Remedy::Replace(PartKind::UpperElement), Remedy::Replace(PartKind::LowerElement)],
    scope: Scope::Panel,
    tempting: PartKind::Breaker,
};

fn fits(home: &Home) -> bool {
    // On hot and neutral the permanent end stands at nothing.
    !home.plant.wiring.hot_neutral
}

fn apply(parameters: &Parameters, home: &mut Home) {
    let level = level_in(parameters, home);
    let (fraction, resistance) = (parameter(parameters, "fraction"), Ohms(parameter(parameters, "ohms")));
    home.plant.elements[level.index()].leak = Some(SheathFault { fraction, resistance });
    let joint = home.plant.wiring.joint_mut(End { wire: Wire::CableG, side: 1 });
    joint.resistance = BURNT_OFF;
    joint.torqued = false;
}
