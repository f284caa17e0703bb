//! Lower thermostat open.
//! Trade sheet, section 9, F12: common practice, no source; expected values computed in 1.6 for an open D1-D2.

use bench::Probe;
use plant::Screw::*;
use plant::fault::{FaultId, PartKind};
use plant::{Level, Wire};

use crate::in_vain::*;
use crate::technician::*;
use crate::work::*;

/// Top satisfied, bottom cold: the supply stands across D1-D2, none at the lower element.
pub fn perfect() -> Work {
    let mut work = Work::at(&order(FaultId::F12, &[]));
    work.acts(arrive());
    work.until(Wire::FeedA, 0.0);
    work.acts(open(Level::Upper));
    work.acts(open(Level::Lower));
    work.volts(U1, U4, 0.0);
    work.volts(U4, H4, 240.0);
    let across = work.volts(D1, D2, 240.0);
    let none = work.volts(LEa, LEb, 0.0);
    let shell = work.degrees(Probe::Shell { level: Level::Lower });
    assert!(shell < 100.0, "cold beside it, so that it ought to call: {shell} °F");
    let cold = work.step();
    work.make_dead(&[D1, D2]);
    let open = work.over(D1, D2);
    work.finds(&[across, none, cold, open]);
    work.fits(PartKind::LowerThermostat);
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
    assert_in_vain(&order(FaultId::F12, &[]));
}
