//! Recirculation that never rests.
//! Trade sheet, section 9, F44: common practice, no source; a warm return with no tap open, the heater at rest once it
//! is shut.

use bench::{Action, Probe, Sight};
use plant::Place;
use plant::fault::{FaultId, PartKind};

use crate::in_vain::*;
use crate::technician::*;
use crate::work::*;

const TIMER: [(&str, f64); 1] = [("check", 0.0)];
const CHECK: [(&str, f64); 1] = [("check", 1.0)];

/// With every tap shut the return is warm; with its valve shut it is not.
fn worked(numbers: &[(&str, f64)], part: PartKind) -> Work {
    let mut work = Work::at(&order(FaultId::F44, numbers));
    work.acts(arrive());
    work.act(Action::WaitForCutOut);
    let runs = part == PartKind::PumpTimer;
    assert!(work.look(Place::HeaterTop).contains(&Sight::Loop { runs }));
    let pump = work.step();
    let back = work.degrees(Probe::ReturnPipe);
    let warm = work.step();
    work.act(Action::ReturnValve { opening: 0.0 });
    let room = work.degrees(Probe::ReturnPipe);
    assert!(back > room + 8.0, "{back} °F in the return, {room} °F once it is shut");
    let shut = work.step();
    work.finds(&[pump, warm, shut]);
    work.make_dead_outside();
    work.acts(drain());
    work.fits(part);
    work.acts(refill());
    work.act(Action::ReturnValve { opening: 1.0 });
    work.acts(energise(work.slot()));
    work.act(Action::WaitForCutOut);
    work.amps(plant::Wire::FeedA, 0.0);
    near(&"return at rest, °F", work.degrees(Probe::ReturnPipe), room, 2.0);
    work.acts(hand_over());
    work
}

pub fn perfect() -> Work {
    worked(&TIMER, PartKind::PumpTimer)
}

#[test]
fn the_right_part_cures() {
    perfect().cured();
    worked(&CHECK, PartKind::ReturnCheck).cured();
}

#[test]
fn a_thermostat_does_not() {
    assert_in_vain(&order(FaultId::F44, &TIMER));
}
