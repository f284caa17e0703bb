//! One pole of the heater's breaker does not make though the handle is on. Line side 240 V, load side none
//! leg to leg; the dead load screw reads 120 V to ground by back-feed through an element that calls.

use super::{Fault, FaultId, Parameter, Parameters, PartKind, Remedy, Scope, Stages, chosen, weight};
use crate::home::Home;
use crate::parts::Contact;
use crate::supply::Circuit;

/// The catalogue entry.
pub const FAULT: Fault = Fault {
    id: FaultId::F19,
    module: module_path!(),
    weight: weight(15.0),
    parameters: &[Parameter::either("pole", "0 first, 1 second")],
    // Drawn not making at all; a pole that wears is F20.
    stages: Stages::Sudden,
    fits,
    apply,
    remedies: &[Remedy::Replace(PartKind::Breaker)],
    scope: Scope::Panel,
    tempting: PartKind::UpperElement,
};

fn fits(home: &Home) -> bool {
    !home.plant.wiring.hot_neutral
}

fn apply(parameters: &Parameters, home: &mut Home) {
    let pole = usize::from(chosen(parameters, "pole"));
    for breaker in home.plant.panel.breakers.iter_mut().filter(|b| b.feeds == Circuit::Heater) {
        breaker.poles[pole] = Contact::Open;
    }
}
