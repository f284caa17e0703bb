//! The neutral splice of a heater on hot and neutral has burnt off. Nothing heats, and the neutral side of the element,
//! which should stand at nothing, stands at the full voltage to ground.

use super::{Fault, FaultId, Parameters, PartKind, Remedy, Scope, Stages, weight};
use crate::home::Home;
use crate::parts::BURNT_OFF;
use crate::points::End;
use crate::wire::Wire;

/// The catalogue entry.
pub const FAULT: Fault = Fault {
    id: FaultId::F65,
    module: module_path!(),
    weight: weight(2.0),
    parameters: &[],
    // Drawn burnt off only; the same splice while it still conducts is F23's.
    stages: Stages::Sudden,
    fits,
    apply,
    remedies: &[Remedy::Remake(&[End { wire: Wire::CableN, side: 1 }])],
    scope: Scope::HeaterParts,
    tempting: PartKind::UpperElement,
};

fn fits(home: &Home) -> bool {
    home.plant.wiring.hot_neutral
}

fn apply(_: &Parameters, home: &mut Home) {
    let joint = home.plant.wiring.joint_mut(End { wire: Wire::CableN, side: 1 });
    joint.resistance = BURNT_OFF;
    joint.charred = true;
    joint.torqued = false;
}
