//! Element of another power than the plate's.
//! Trade sheet, section 9, F29: common practice, no source; 1750 W at 240 V: 32.9 Ω, 7.3 A (computed).

use bench::{Action, Shown, Writing};
use plant::Screw::*;
use plant::fault::{FaultId, PartKind};
use plant::{Level, Wire};

use crate::in_vain::*;
use crate::technician::*;
use crate::work::*;

const LOWER: [(&str, f64); 2] = [("level", 1.0), ("share", 0.4)];

/// Amps first, then the stamp against the plate.
pub fn perfect() -> Work {
    let mut work = Work::at(&order(FaultId::F29, &LOWER));
    work.acts(arrive());
    work.draw(20.0);
    work.until(Wire::FeedA, 7.3);
    work.acts(open(Level::Upper));
    work.acts(open(Level::Lower));
    let amps = work.amps(Wire::LowerSwitched, 7.3);
    let volts = work.volts(LEa, LEb, 240.0);
    work.make_dead(&[LEa, LEb]);
    work.acts(lift_element(Level::Lower));
    let stamp = work.act(Action::Read { what: Writing::StampLower }).shown;
    let Shown::Stamp { rating, .. } = stamp else { panic!("{stamp:?}") };
    near(&"stamped watts", rating.watts.get(), 1750.0, 0.1);
    let stamped = work.step();
    let ohms = work.ohms(LEa, LEb, 0.98 * 32.9, 0.4);
    work.insulated(LEa, Shell);
    work.finds(&[amps, volts, stamped, ohms]);
    work.fits_drained(PartKind::LowerElement);
    work.ohms(LEa, LEb, 12.54, 0.1);
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
    assert_in_vain(&order(FaultId::F29, &LOWER));
}
