//! Upper thermostat fails to transfer.
//! Trade sheet, section 9, F10: common practice, no source; expected values computed in 1.6 for an open U1-U4.

use plant::Screw::*;
use plant::fault::{FaultId, PartKind};
use plant::{Level, Wire};

use crate::in_vain::*;
use crate::technician::*;
use crate::work::*;

/// Top satisfied, bottom cold: the blade has left U2 and arrives nowhere.
pub fn perfect() -> Work {
    let mut work = Work::at(&order(FaultId::F10, &[]));
    work.acts(arrive());
    work.until(Wire::FeedA, 0.0);
    work.acts(open(Level::Upper));
    work.acts(open(Level::Lower));
    work.volts(H2, H4, 240.0);
    let left = work.volts(U1, U2, 240.0);
    work.volts(UEa, UEb, 0.0);
    let nowhere = work.volts(U1, U4, 240.0);
    work.volts(U4, H4, 0.0);
    work.volts(D1, D2, 0.0);
    work.volts(LEa, LEb, 0.0);
    work.make_dead(&[U1, U2, U4]);
    work.over(U1, U2);
    let open = work.over(U1, U4);
    work.finds(&[left, nowhere, open]);
    work.fits(PartKind::UpperThermostat);
    work.proves(18.75);
    work.acts(hand_over());
    work
}

#[test]
fn the_right_part_cures() {
    perfect().cured();
}

#[test]
fn the_lower_element_does_not() {
    assert_in_vain(&order(FaultId::F10, &[]));
}
