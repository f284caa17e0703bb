//! Dry-fired, delayed failure.
//! Trade sheet, section 9, F17: common practice, no source; readings of row F of 1.6 (computed).

use bench::{Shown, Sight};
use plant::Screw::*;
use plant::fault::{FaultId, PartKind};
use plant::{Level, Wire};

use crate::in_vain::*;
use crate::technician::*;
use crate::work::*;

const NUMBERS: [(&str, f64); 2] = [("fraction", 0.5), ("ohms", 8000.0)];

/// Full volts and no current; leads off it is open and leaks to the shell; taken out its plating is gone.
pub fn perfect() -> Work {
    let mut work = Work::at(&order(FaultId::F17, &NUMBERS));
    work.opens_up();
    let volts = work.volts(UEa, UEb, 240.0);
    let amps = work.amps(Wire::UpperSwitched, 0.0);
    work.make_dead(&[UEa, UEb, LEa, LEb]);
    work.acts(lift_element(Level::Upper));
    let leaks = work.ohms(UEa, Shell, 8000.0, 200.0);
    let other = work.over(UEb, Shell);
    work.acts(lift_element(Level::Lower));
    let lower = work.ohms(LEa, LEb, 12.54, 0.1);
    work.insulated(LEa, Shell);
    work.acts(land_element(Level::Lower));
    work.finds(&[volts, amps, leaks, other, lower]);
    work.acts(drain());
    let out = work.fits(PartKind::UpperElement).shown;
    let Shown::DoneWith { sights } = out else { panic!("{out:?}") };
    assert!(sights.contains(&Sight::ScorchedElement { level: Level::Upper }), "{sights:?}");
    work.acts(refill());
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
fn a_thermostat_does_not() {
    assert_in_vain(&order(FaultId::F17, &NUMBERS));
}
