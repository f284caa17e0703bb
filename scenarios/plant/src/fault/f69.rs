//! The directory names the wrong breaker, and somebody who meant the range has switched the heater off. The one that is
//! labelled for the heater is on and feeds the range.

use super::{Fault, FaultId, Parameters, PartKind, Remedy, Scope, Stages, weight};
use crate::home::Home;
use crate::supply::{Circuit, Handle, Panel};

/// The catalogue entry.
pub const FAULT: Fault = Fault {
    id: FaultId::F69,
    module: module_path!(),
    weight: weight(6.0),
    parameters: &[],
    // Somebody wrote it.
    stages: Stages::Sudden,
    fits,
    apply,
    remedies: &[Remedy::Relabel],
    scope: Scope::Words,
    tempting: PartKind::Limit,
};

fn fits(home: &Home) -> bool {
    home.plant.panel.slot_of(Circuit::Range).is_some()
}

fn apply(_: &Parameters, home: &mut Home) {
    for breaker in &mut home.plant.panel.breakers {
        match breaker.feeds {
            Circuit::Heater => {
                breaker.label = Circuit::Range;
                breaker.handle = Handle::Off;
            }
            Circuit::Range => breaker.label = Circuit::Heater,
            _ => {}
        }
    }
}

/// The heater's breaker is labelled for the range, or the range's for the heater: two that bear one name mislead too.
pub(super) fn mistaken(panel: &Panel) -> bool {
    let bears = |feeds, label| panel.feeding(feeds).is_some_and(|b| b.label == label);
    bears(Circuit::Heater, Circuit::Range) || bears(Circuit::Range, Circuit::Heater)
}

/// Writes both labels as they should be.
pub(super) fn corrected(panel: &mut Panel) {
    if mistaken(panel) {
        for breaker in
            panel.breakers.iter_mut().filter(|b| matches!(b.feeds, Circuit::Heater | Circuit::Range))
        {
            breaker.label = breaker.feeds;
        }
    }
}
