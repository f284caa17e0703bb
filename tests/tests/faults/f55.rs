//! Rusty hot water.
//! Trade sheet, section 9, F55: common practice, no source.

use plant::fault::FaultId;

use crate::in_vain::*;
use crate::rod;
use crate::work::*;

const NUMBERS: &[(&str, f64)] = &[("left", 0.01), ("bare", 0.12)];

/// Hot is brown, cold is clear, and the rod is a bare core.
pub fn perfect() -> Work {
    rod::changed(FaultId::F55, NUMBERS, true, false, true)
}

#[test]
fn the_right_part_cures() {
    perfect().cured();
}

#[test]
fn an_element_does_not() {
    assert_in_vain(&order(FaultId::F55, NUMBERS));
}
