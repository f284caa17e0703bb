//! The service's neutral is loose. The heater, on both legs, knows nothing of it; leg to neutral the house has too much on
//! one side and too little on the other, as its loads happen to be.

use quantity::{Ohms, Tag};

use super::{Fault, FaultId, Parameter, Parameters, PartKind, Remedy, Scope, Stages, Way, parameter, weight};
use crate::home::Home;
use crate::supply::ServiceKind;

/// The catalogue entry.
pub const FAULT: Fault = Fault {
    id: FaultId::F73,
    module: module_path!(),
    weight: weight(3.0),
    parameters: &[Parameter::spread(
        "ohms",
        [20.0, 1e3],
        "ohm",
        Tag::Model("hanging by a strand, the earth carrying the rest"),
    )],
    stages: Stages::Along(Way::Grows("ohms")),
    fits,
    apply,
    remedies: &[Remedy::CallUtility],
    scope: Scope::Utility,
    tempting: PartKind::Breaker,
};

fn fits(home: &Home) -> bool {
    home.plant.service.kind == ServiceKind::Split240
}

fn apply(parameters: &Parameters, home: &mut Home) {
    home.plant.service.neutral = Ohms(parameter(parameters, "ohms"));
}
