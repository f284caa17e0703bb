//! Element of another power than the plate's, or made for a higher voltage.
//! Trade sheet, section 9, F29: common practice, no source; 1750 W at 240 V: 32.9 Ω, 7.3 A; 4500 W at 277 V: 17.05 Ω, 14.1 A
//! at 240 V (computed).

use bench::{Action, Shown, Writing};
use plant::Screw::*;
use plant::fault::{FaultId, PartKind};
use plant::{Level, Wire};

use crate::in_vain::*;
use crate::technician::*;
use crate::work::*;

const LOWER: [(&str, f64); 3] = [("level", 1.0), ("share", 0.4), ("volts", 0.0)];
const HIGHER: [(&str, f64); 3] = [("level", 1.0), ("share", 0.4), ("volts", 1.0)];

/// What the wrong one shows: amperes, stamped watts and volts, ohms at the element's own end of a warm coil.
struct Shows {
    amps: f64,
    watts: f64,
    volts: f64,
    ohms: f64,
}

pub fn perfect() -> Work {
    found(&LOWER, &Shows { amps: 7.3, watts: 1750.0, volts: 240.0, ohms: 32.9 })
}

/// Amps first, then the stamp against the plate.
fn found(numbers: &[(&str, f64)], shows: &Shows) -> Work {
    let mut work = Work::at(&order(FaultId::F29, numbers));
    work.acts(arrive());
    work.draw(20.0);
    work.until(Wire::FeedA, shows.amps);
    work.acts(open(Level::Upper));
    work.acts(open(Level::Lower));
    let amps = work.amps(Wire::LowerSwitched, shows.amps);
    let volts = work.volts(LEa, LEb, 240.0);
    work.make_dead(&[LEa, LEb]);
    work.acts(lift_element(Level::Lower));
    let stamp = work.act(Action::Read { what: Writing::StampLower }).shown;
    let Shown::Stamp { rating, .. } = stamp else { panic!("{stamp:?}") };
    near(&"stamped watts", rating.watts.get(), shows.watts, 0.1);
    near(&"stamped volts", rating.volts.get(), shows.volts, 0.1);
    let stamped = work.step();
    let ohms = work.ohms(LEa, LEb, 0.98 * shows.ohms, 0.4);
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
    found(&HIGHER, &Shows { amps: 14.1, watts: 4500.0, volts: 277.0, ohms: 17.05 }).cured();
}

#[test]
fn a_thermostat_does_not() {
    assert_in_vain(&order(FaultId::F29, &LOWER));
}
