//! Limit and upper thermostat welded.
//! Trade sheet, section 9, F48: common practice, no source; water past 200 °F at the relief valve, the limit's button up
//! and its poles closed all the same.

use bench::Sight;
use plant::fault::FaultId;

use crate::in_vain::*;
use crate::runaway;
use crate::work::*;

/// The button is up, and still the full volts pass: its contacts are welded.
pub fn perfect() -> Work {
    runaway::stopped(FaultId::F48, &[], &[Sight::Button { proud: true }])
}

#[test]
fn both_parts_cure() {
    perfect().cured();
}

#[test]
fn a_relief_valve_does_not() {
    assert_in_vain(&order(FaultId::F48, &[]));
}
