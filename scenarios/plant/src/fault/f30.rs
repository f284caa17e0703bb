//! Miswired by a hand that was not a technician's: the lower control is fed from U2 instead of U4. Both elements
//! run together while the top is cold, more than the branch is made for; once it is hot neither runs.

use super::{Fault, FaultId, Parameters, PartKind, Remedy, Scope, Stages, weight};
use crate::home::Home;
use crate::layout::Layout;
use crate::points::{End, Screw};
use crate::wire::Wire;

/// The end that belongs on U4.
const END: End = End { wire: Wire::Transfer, side: 0 };

/// The catalogue entry.
pub const FAULT: Fault = Fault {
    id: FaultId::F30,
    module: module_path!(),
    weight: weight(12.0),
    parameters: &[],
    // Somebody landed it there.
    stages: Stages::Sudden,
    fits,
    apply,
    remedies: &[Remedy::Land(&[END])],
    scope: Scope::HeaterParts,
    tempting: PartKind::Breaker,
};

fn fits(home: &Home) -> bool {
    home.plant.plate.layout == Layout::NonSimultaneous
}

fn apply(_: &Parameters, home: &mut Home) {
    home.plant.wiring.joint_mut(END).on = Some(Screw::U2);
}
