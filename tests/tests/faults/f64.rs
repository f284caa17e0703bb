//! Nothing but a misleading measurement.
//! Trade sheet, section 9, F64: common practice, no source; tens of volts on dead wires, under 0.3 V at low impedance
//! (6.13, computed).

use bench::Action;
use plant::Screw::*;
use plant::fault::{Advice, FaultId};
use plant::{Level, Wire};

use crate::in_vain::*;
use crate::technician::*;
use crate::work::*;

const LONG: [(&str, f64); 1] = [("run", 18.0)];

/// Off and locked, ten megohms show volts that a low impedance does not.
pub fn perfect() -> Work {
    let mut work = Work::at(&order(FaultId::F64, &LONG));
    work.opens_up();
    let live = work.volts(H1, H3, 240.0);
    let slot = work.slot();
    work.act(Action::Breaker { slot, on: false });
    let ghost = work.reads(H1, Shell);
    assert!((15.0..120.0).contains(&ghost), "{ghost} V on dead wires");
    let shows = work.step();
    work.make_dead(&[]);
    let vanishes = work.ghost(H1, Shell);
    work.finds(&[live, shows, vanishes]);
    work.act(Action::Advise { advice: Advice::NothingWrong });
    work.acts(close(Level::Lower));
    work.acts(close(Level::Upper));
    work.acts(energise(slot));
    work.draw(20.0);
    work.until(Wire::FeedA, 18.75);
    work.act(Action::WaitForCutOut);
    work.amps(Wire::FeedA, 0.0);
    work.acts(hand_over());
    work
}

#[test]
fn the_right_words_end_it() {
    perfect().cured();
}

#[test]
fn a_thermostat_does_not() {
    assert_in_vain(&order(FaultId::F64, &LONG));
}
