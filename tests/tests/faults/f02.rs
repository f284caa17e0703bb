//! Upper element open.
//! Trade sheet, section 9, F02: common practice, no source; readings of row F of 1.6 and 12.8 Ω of 2.1 (computed), 2 % less cold.

use plant::Screw::*;
use plant::fault::{FaultId, PartKind};
use plant::{Level, Wire};

use crate::in_vain::*;
use crate::technician::*;
use crate::work::*;

/// A cold tank: the upper thermostat calls for ever and never hands over.
pub fn perfect() -> Work {
    let mut work = Work::at(&order(FaultId::F02, &[]));
    work.opens_up();
    work.volts(H1, H3, 240.0);
    work.volts(H2, H4, 240.0);
    work.volts(U1, U2, 0.0);
    work.volts(U1, U4, 240.0);
    work.volts(U4, H4, 0.0);
    let volts = work.volts(UEa, UEb, 240.0);
    work.volts(D1, D2, 0.0);
    work.volts(LEa, LEb, 0.0);
    work.volts(UEa, Shell, 120.0);
    work.volts(UEb, Shell, 120.0);
    let amps = work.amps(Wire::UpperSwitched, 0.0);
    work.amps(Wire::FeedA, 0.0);
    // Cold water beside it: a coil that parts when warm would be whole now.
    work.draw(40.0);
    work.make_dead(&[UEa, UEb, LEa, LEb]);
    work.acts(lift_element(Level::Upper));
    let ohms = work.over(UEa, UEb);
    let lower = work.coil_is_whole(Level::Lower);
    work.finds(&[volts, amps, ohms, lower]);
    work.fits_drained(PartKind::UpperElement);
    work.ohms(UEa, UEb, 12.54, 0.1);
    work.insulated(UEa, Shell);
    work.acts(land_element(Level::Upper));
    work.proves(18.75);
    work.acts(hand_over());
    work
}

#[test]
fn the_right_part_cures() {
    perfect().cured();
}

#[test]
fn the_other_element_does_not() {
    assert_in_vain(&order(FaultId::F02, &[]));
}
