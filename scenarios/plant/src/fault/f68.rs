//! The wires of U2 and U4 swapped when a thermostat was changed. The cold top feeds the lower element; once the top
//! is hot it feeds the upper one, which then has nothing to stop it but the limit.

use super::{Fault, FaultId, Parameters, PartKind, Remedy, Scope, Stages, weight};
use crate::home::Home;
use crate::layout::Layout;
use crate::points::{End, Screw};
use crate::wire::Wire;

/// The two ends.
const ENDS: [End; 2] = [End { wire: Wire::UpperSwitched, side: 0 }, End { wire: Wire::Transfer, side: 0 }];

/// The catalogue entry.
pub const FAULT: Fault = Fault {
    id: FaultId::F68,
    module: module_path!(),
    weight: weight(5.0),
    parameters: &[],
    // Somebody landed them there.
    stages: Stages::Sudden,
    fits,
    apply,
    remedies: &[Remedy::Land(&ENDS)],
    scope: Scope::HeaterParts,
    tempting: PartKind::Limit,
};

fn fits(home: &Home) -> bool {
    home.plant.plate.layout == Layout::NonSimultaneous
}

fn apply(_: &Parameters, home: &mut Home) {
    let [upper, lower] = ENDS;
    home.plant.wiring.joint_mut(upper).on = Some(Screw::U4);
    home.plant.wiring.joint_mut(lower).on = Some(Screw::U2);
}
