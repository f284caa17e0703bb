//! A hot joint beside the limit. Its own heat, not the water's, opens the limit: it trips again and again with the tank
//! at ordinary temperature, and a new limit trips too.

use quantity::{Ohms, Tag};

use super::{
    Fault, FaultId, Parameter, Parameters, PartKind, Remedy, Scope, Stages, Way, chosen, parameter, weight,
};
use crate::home::Home;
use crate::points::End;
use crate::wire::Wire;

/// The line screws of the limit.
const ENDS: [End; 2] = [End { wire: Wire::FeedA, side: 1 }, End { wire: Wire::FeedB, side: 1 }];

/// The catalogue entry.
pub const FAULT: Fault = Fault {
    id: FaultId::F71,
    module: module_path!(),
    weight: weight(12.0),
    parameters: &[
        Parameter::either("leg", "0 at H1, 1 at H3"),
        Parameter::between(
            "ohms",
            [0.07, 0.11],
            "ohm",
            Tag::Computed("25 to 39 W at 18.75 A, of whose 250 to 390 K 15 % reach the limit"),
        ),
    ],
    stages: Stages::Along(Way::Grows("ohms")),
    fits,
    apply,
    remedies: &[Remedy::Remake(&[ENDS[0]]), Remedy::Remake(&[ENDS[1]])],
    scope: Scope::HeaterParts,
    tempting: PartKind::Limit,
};

fn fits(home: &Home) -> bool {
    !home.plant.wiring.hot_neutral
}

fn apply(parameters: &Parameters, home: &mut Home) {
    let joint = home.plant.wiring.joint_mut(ENDS[usize::from(chosen(parameters, "leg"))]);
    joint.resistance = Ohms(parameter(parameters, "ohms"));
    joint.charred = true;
    joint.torqued = false;
}
