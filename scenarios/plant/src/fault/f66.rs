//! A 240 V heater on one leg and the neutral: the white wire of its cable was landed on the neutral bar. It makes a
//! quarter of its power and hurts nothing.

use super::{Fault, FaultId, Parameters, PartKind, Remedy, Scope, Stages, weight};
use crate::home::Home;
use crate::points::{End, Screw};
use crate::supply::ServiceKind;
use crate::wire::Wire;

/// The catalogue entry.
pub const FAULT: Fault = Fault {
    id: FaultId::F66,
    module: module_path!(),
    weight: weight(3.0),
    parameters: &[],
    // Somebody landed it there.
    stages: Stages::Sudden,
    fits,
    apply,
    remedies: &[Remedy::Land(&[End { wire: Wire::CableB, side: 0 }, End { wire: Wire::BoxB, side: 0 }])],
    scope: Scope::Panel,
    tempting: PartKind::UpperElement,
};

fn fits(home: &Home) -> bool {
    home.plant.service.kind == ServiceKind::Split240 && !home.plant.wiring.hot_neutral
}

fn apply(_: &Parameters, home: &mut Home) {
    let wire = if home.plant.wiring.boxed { Wire::BoxB } else { Wire::CableB };
    home.plant.wiring.joint_mut(End { wire, side: 0 }).on = Some(Screw::N);
}
