//! Anode spent, nothing felt of it yet.
//! Trade sheet, section 9, F56: common practice, no source.

use plant::fault::FaultId;

use crate::in_vain::*;
use crate::rod;
use crate::work::*;

const NUMBERS: &[(&str, f64)] = &[("left", 0.2)];

/// Water is clear and does not smell; only the rod itself tells.
pub fn perfect() -> Work {
    rod::changed(FaultId::F56, NUMBERS, false, false, true)
}

#[test]
fn the_right_part_cures() {
    perfect().cured();
}

/// A new heater comes with a new rod: it cures, and it was in vain.
#[test]
fn a_new_heater_is_dear() {
    let (work, verdict) = changed_in_error(&order(FaultId::F56, NUMBERS));
    assert!(
        verdict.lost(drill::RuleId::ChangedInVain) > 0.0 && verdict.cure.is_right(),
        "{:?}",
        verdict.cure
    );
    assert!(!work.session.home.plant.vessel.anode.is_worn());
}
