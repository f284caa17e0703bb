//! One leg of the service is lost. Half the house is dark or dim, and what is left of the voltage there comes back
//! through whatever is on from leg to leg. Nothing at the heater is broken.

use super::{Fault, FaultId, Parameter, Parameters, PartKind, Remedy, Scope, Stages, chosen, weight};
use crate::home::Home;
use crate::parts::BURNT_OFF;

/// The catalogue entry.
pub const FAULT: Fault = Fault {
    id: FaultId::F22,
    module: module_path!(),
    weight: weight(6.0),
    parameters: &[Parameter::either("lost", "0 leg 1, 1 leg 2")],
    // Drawn lost only, as the utility is called.
    stages: Stages::Sudden,
    fits,
    apply,
    remedies: &[Remedy::CallUtility],
    scope: Scope::Utility,
    tempting: PartKind::UpperElement,
};

fn fits(home: &Home) -> bool {
    !home.plant.service.kind.hot_neutral()
}

fn apply(parameters: &Parameters, home: &mut Home) {
    home.plant.service.impedance[usize::from(chosen(parameters, "lost"))] = BURNT_OFF;
}
