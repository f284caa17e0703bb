//! Both elements open.
//! Trade sheet, section 9, F67: common practice, no source; readings of row H of 1.6 (computed).

use plant::Screw::*;
use plant::fault::{FaultId, PartKind};
use plant::{Level, Wire};

use crate::in_vain::*;
use crate::technician::*;
use crate::work::*;

/// Volts at the upper one and no current; with the leads off neither reads.
pub fn perfect() -> Work {
    let mut work = Work::at(&order(FaultId::F67, &[]));
    work.opens_up();
    work.volts(H2, H4, 240.0);
    let volts = work.volts(UEa, UEb, 240.0);
    let amps = work.amps(Wire::FeedA, 0.0);
    work.ghost(U4, H4);
    work.make_dead(&[UEa, UEb, LEa, LEb]);
    work.acts(lift_element(Level::Upper));
    work.acts(lift_element(Level::Lower));
    let upper = work.over(UEa, UEb);
    let lower = work.over(LEa, LEb);
    work.finds(&[volts, amps, upper, lower]);
    work.acts(drain());
    work.fits(PartKind::UpperElement);
    work.fits(PartKind::LowerElement);
    work.acts(refill());
    work.ohms(UEa, UEb, 12.54, 0.1);
    work.ohms(LEa, LEb, 12.54, 0.1);
    work.acts(land_element(Level::Upper));
    work.acts(land_element(Level::Lower));
    work.proves(18.75);
    work.acts(hand_over());
    work
}

#[test]
fn both_cure() {
    perfect().cured();
}

/// One alone leaves the other dead.
#[test]
fn one_element_is_not_enough() {
    let mut work = Work::at(&order(FaultId::F67, &[]));
    work.opens_up();
    work.make_dead(&[UEa, UEb]);
    work.fits_drained(PartKind::UpperElement);
    work.runs();
    work.acts(hand_over());
    assert!(!work.verdict().cure.is_right());
}

#[test]
fn a_thermostat_does_not() {
    assert_in_vain(&order(FaultId::F67, &[]));
}
