//! Drain valve drips.
//! Trade sheet, section 9, F51: common practice, no source.

use bench::{Action, Fitting};
use plant::fault::{FaultId, PartKind};

use crate::in_vain::*;
use crate::technician::*;
use crate::wet::drips_alone;
use crate::work::*;

const NUMBERS: &[(&str, f64)] = &[("diameter", 0.0002)];

pub fn perfect() -> Work {
    drips_alone(FaultId::F51, NUMBERS, Fitting::DrainValve, |work| {
        work.acts(drain());
        work.act(Action::Drain { opening: 0.0 });
        work.fits(PartKind::DrainValve);
        work.acts(refill().into_iter().skip(1));
    })
}

#[test]
fn the_right_part_cures() {
    perfect().cured();
}

/// It comes with a drain valve of its own.
#[test]
fn a_new_heater_is_dear() {
    assert_dear(&order(FaultId::F51, NUMBERS));
}
