//! A burnt screw at the lower thermostat. It drops half a volt and more while the lower element runs, browns the wire,
//! and in the end carries nothing.

use quantity::{Ohms, Tag};

use super::{
    Fault, FaultId, Parameter, Parameters, PartKind, Remedy, Scope, Stages, Way, chosen, parameter, weight,
};
use crate::home::Home;
use crate::layout::Layout;
use crate::parts::BURNT_OFF;
use crate::points::End;
use crate::wire::Wire;

/// The two screws of the lower thermostat.
const ENDS: [End; 2] = [End { wire: Wire::Transfer, side: 1 }, End { wire: Wire::LowerSwitched, side: 0 }];

/// The catalogue entry.
pub const FAULT: Fault = Fault {
    id: FaultId::F24,
    module: module_path!(),
    weight: weight(25.0),
    parameters: &[
        Parameter::either("leg", "0 at D1, 1 at D2"),
        Parameter::either("open", "0 still conducts, 1 burnt off"),
        Parameter::spread(
            "ohms",
            [0.06, 0.11],
            "ohm",
            Tag::Computed("1.1 to 2.1 V and 21 to 39 W at 18.75 A: hot, and not yet burnt off"),
        ),
    ],
    stages: Stages::Until(Way::Grows("ohms"), "open"),
    fits,
    apply,
    remedies: &[Remedy::Remake(&[ENDS[0]]), Remedy::Remake(&[ENDS[1]])],
    scope: Scope::HeaterParts,
    tempting: PartKind::LowerElement,
};

fn fits(home: &Home) -> bool {
    home.plant.plate.layout == Layout::NonSimultaneous
}

fn apply(parameters: &Parameters, home: &mut Home) {
    let burnt_off = chosen(parameters, "open");
    let joint = home.plant.wiring.joint_mut(ENDS[usize::from(chosen(parameters, "leg"))]);
    joint.resistance = if burnt_off { BURNT_OFF } else { Ohms(parameter(parameters, "ohms")) };
    joint.charred = true;
    joint.torqued = false;
}
