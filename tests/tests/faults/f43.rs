//! Hot line leaks out of sight.
//! Trade sheet, section 9, F43: common practice, no source.

use bench::Action;
use plant::fault::{FaultId, PartKind};
use plant::{Place, Tap};

use crate::in_vain::*;
use crate::work::*;

const NUMBERS: &[(&str, f64)] = &[("diameter", 0.002)];

/// Every tap shut and the meter turns; with the heater's cold valve shut it stands.
pub fn perfect() -> Work {
    let mut work = Work::at(&order(FaultId::F43, NUMBERS));
    work.act(Action::TellHousehold);
    assert!(work.meter_turns());
    let turns = work.step();
    work.act(Action::ColdValve { opening: 0.0 });
    work.act(Action::Wait { minutes: 2.0 });
    assert!(!work.meter_turns());
    let stands = work.step();
    for place in [Place::HeaterTop, Place::Relief, Place::Drain] {
        work.look(place);
    }
    let dry = work.step();
    work.finds(&[turns, stands, dry - 2, dry - 1, dry]);
    work.act(Action::Tap { tap: Tap::Kitchen, opening: 1.0 });
    work.act(Action::Wait { minutes: 2.0 });
    work.fits(PartKind::HotLine);
    work.act(Action::ColdValve { opening: 1.0 });
    work.act(Action::Wait { minutes: 3.0 });
    work.act(Action::Tap { tap: Tap::Kitchen, opening: 0.0 });
    work.act(Action::Wait { minutes: 2.0 });
    assert!(!work.meter_turns());
    work.acts([Action::TellResult, Action::HandOver]);
    work
}

#[test]
fn the_right_part_cures() {
    perfect().cured();
}

#[test]
fn a_thermostat_does_not() {
    assert_in_vain(&order(FaultId::F43, NUMBERS));
}
