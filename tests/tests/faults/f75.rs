//! Soft leak of an element's insulation.
//! Trade sheet, section 9, F75: common practice, no source; 1 MΩ at 500 V of 2.5 (published: an element maker's test
//! page).

use bench::Action;
use plant::Screw::*;
use plant::fault::{FaultId, PartKind};
use plant::{Level, Wire};

use crate::in_vain::*;
use crate::technician::*;
use crate::work::*;

const LOWER: [(&str, f64); 3] = [("level", 1.0), ("fraction", 0.5), ("ohms", 60_000.0)];

/// Satisfied nothing flows; end to end it is good; 60 kΩ lead to the shell.
pub fn perfect() -> Work {
    let mut work = Work::at(&order(FaultId::F75, &LOWER));
    work.acts(arrive());
    work.act(Action::WaitForCutOut);
    let [one, two] = [Wire::FeedA, Wire::FeedB].map(|leg| work.amps(leg, 0.0));
    work.acts(open(Level::Upper));
    work.acts(open(Level::Lower));
    work.make_dead(&[UEa, UEb, LEa, LEb]);
    work.acts(lift_element(Level::Lower));
    let good = work.ohms(LEa, LEb, 12.54, 0.1);
    let soft = work.ohms(LEa, Shell, 60_000.0, 1500.0);
    work.finds(&[one, two, good, soft]);
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
    assert_in_vain(&order(FaultId::F75, &LOWER));
}
