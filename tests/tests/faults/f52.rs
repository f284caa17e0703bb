//! Nipple corroded through.
//! Trade sheet, section 9, F52: common practice, no source.

use bench::{Action, Fitting};
use plant::fault::{FaultId, PartKind};

use crate::in_vain::*;
use crate::technician::*;
use crate::wet::drips_alone;
use crate::work::*;

const NUMBERS: &[(&str, f64)] = &[("diameter", 0.0002)];

pub fn perfect() -> Work {
    drips_alone(FaultId::F52, NUMBERS, Fitting::Nipples, |work| {
        work.acts(drain().into_iter().take(4));
        work.act(Action::Wait { minutes: 5.0 });
        work.fits(PartKind::Nipples);
        work.acts(refill());
    })
}

#[test]
fn the_right_part_cures() {
    perfect().cured();
}

/// It comes with nipples of its own.
#[test]
fn a_new_heater_is_dear() {
    assert_dear(&order(FaultId::F52, NUMBERS));
}
