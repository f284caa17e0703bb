//! Element whose coil parts when it is warm.
//! Not on the trade sheet. That a broken coil may close when cool is common practice, no source; 18.75 A and 12.54 Ω as
//! in its 2.1 (computed).

use plant::Screw::*;
use plant::fault::{FaultId, PartKind};
use plant::{Level, Wire};

use crate::in_vain::*;
use crate::technician::*;
use crate::work::*;

const LOWER: [(&str, f64); 2] = [("level", 1.0), ("parts", 95.0)];

/// Cool it carries its current; warm it has its volts and carries none, and then the meter finds it open.
pub fn perfect() -> Work {
    let mut work = Work::at(&order(FaultId::F76, &LOWER));
    work.opens_up();
    work.until(Wire::UpperSwitched, 0.0);
    work.draw(20.0);
    work.until(Wire::UpperSwitched, 0.0);
    work.until(Wire::LowerSwitched, 18.75);
    let carries = work.amps(Wire::LowerSwitched, 18.75);
    work.until(Wire::LowerSwitched, 0.0);
    let volts = work.volts(LEa, LEb, 240.0);
    let amps = work.amps(Wire::LowerSwitched, 0.0);
    work.make_dead(&[LEa, LEb, UEa, UEb]);
    work.acts(lift_element(Level::Lower));
    let open = work.over(LEa, LEb);
    let upper = work.coil_is_whole(Level::Upper);
    work.finds(&[carries, volts, amps, open, upper]);
    work.fits_drained(PartKind::LowerElement);
    work.acts(land_element(Level::Lower));
    work.proves(18.75);
    work.acts(hand_over());
    work
}

#[test]
fn the_right_part_cures() {
    perfect().cured();
}

/// An ohmmeter on a cool element finds nothing: the state is its own.
#[test]
fn cool_it_reads_good() {
    let mut work = Work::at(&order(FaultId::F76, &LOWER));
    work.opens_up();
    work.act(bench::Action::WaitForCutOut);
    work.draw(40.0);
    work.make_dead(&[LEa, LEb]);
    work.acts(lift_element(Level::Lower));
    work.ohms(LEa, LEb, 12.54, 0.1);
}

#[test]
fn the_lower_thermostat_does_not() {
    let work = assert_in_vain(&order(FaultId::F76, &LOWER));
    assert!(work.session.home.plant.elements[1].parting.is_some());
}
