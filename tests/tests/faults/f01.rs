//! Lower element open.
//! Trade sheet, section 9, F01: common practice, no source; readings of row G of 1.6 and 12.8 Ω of 2.1 (computed), 2 % less cold.

use plant::Screw::*;
use plant::fault::{FaultId, PartKind};
use plant::{Level, Wire};

use crate::in_vain::*;
use crate::technician::*;
use crate::work::*;

/// Hot top, cold bottom, the lower element called and carrying nothing.
pub fn perfect() -> Work {
    let mut work = Work::at(&order(FaultId::F01, &[]));
    work.acts(arrive());
    work.until(Wire::FeedA, 0.0);
    work.acts(open(Level::Upper));
    work.acts(open(Level::Lower));
    work.volts(H1, H3, 240.0);
    work.volts(H2, H4, 240.0);
    work.volts(U1, U2, 240.0);
    work.volts(U1, U4, 0.0);
    work.volts(U4, H4, 240.0);
    work.volts(D1, D2, 0.0);
    work.volts(UEa, UEb, 0.0);
    let volts = work.volts(LEa, LEb, 240.0);
    work.volts(LEa, Shell, 120.0);
    work.volts(LEb, Shell, 120.0);
    let amps = work.amps(Wire::LowerSwitched, 0.0);
    work.make_dead(&[UEa, UEb, LEa, LEb]);
    work.acts(lift_element(Level::Lower));
    let ohms = work.over(LEa, LEb);
    work.over(LEa, Shell);
    let upper = work.coil_is_whole(Level::Upper);
    work.finds(&[volts, amps, ohms, upper]);
    work.fits_drained(PartKind::LowerElement);
    work.ohms(LEa, LEb, 12.54, 0.1);
    work.insulated(LEa, Shell);
    work.acts(land_element(Level::Lower));
    work.proves(18.75);
    work.acts(hand_over());
    work
}

#[test]
fn the_right_part_cures() {
    perfect().cured();
}

#[test]
fn a_thermostat_does_not() {
    let work = assert_in_vain(&order(FaultId::F01, &[]));
    assert!(work.session.home.plant.elements[1].open);
}
