//! Hot water smells of rotten eggs.
//! Trade sheet, section 9, F54: common practice, no source.

use plant::fault::FaultId;

use crate::in_vain::*;
use crate::rod;
use crate::work::*;

const NUMBERS: &[(&str, f64)] = &[("activity", 1.0)];

/// Hot smells, cold does not, and the rod is of magnesium.
pub fn perfect() -> Work {
    rod::changed(FaultId::F54, NUMBERS, false, true, false)
}

#[test]
fn the_right_part_cures() {
    perfect().cured();
}

#[test]
fn a_new_heater_brings_magnesium_again() {
    assert_in_vain(&order(FaultId::F54, NUMBERS));
}
