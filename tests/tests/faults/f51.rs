//! Drain valve drips.
//! Trade sheet, section 9, F51: common practice, no source.

use bench::{Action, Fitting};
use plant::fault::{FaultId, PartKind};

use crate::in_vain::*;
use crate::technician::*;
use crate::wet::drips_alone;
use crate::work::*;

const NUMBERS: &[(&str, f64)] = &[("diameter", 0.0002), ("grit", 0.0), ("clogged", 0.8)];
const GRIT: &[(&str, f64)] = &[("diameter", 0.0002), ("grit", 1.0), ("clogged", 0.8)];

pub fn perfect() -> Work {
    changed(NUMBERS, 0)
}

/// Drained, and then so many waits more as a clogged one needs.
fn changed(numbers: &[(&str, f64)], more: usize) -> Work {
    drips_alone(FaultId::F51, numbers, Fitting::DrainValve, |work| {
        work.acts(drain());
        let left = work.session.home.plant.fill();
        assert_eq!(more > 0, left > 0.05, "{left} of the tank still in it");
        work.acts(std::iter::repeat_n(Action::Wait { minutes: 60.0 }, more));
        work.act(Action::Drain { opening: 0.0 });
        work.fits(PartKind::DrainValve);
        work.acts(refill().into_iter().skip(1));
    })
}

#[test]
fn the_right_part_cures() {
    perfect().cured();
    changed(GRIT, 3).cured();
}

/// It comes with a drain valve of its own.
#[test]
fn a_new_heater_is_dear() {
    assert_dear(&order(FaultId::F51, NUMBERS));
}
