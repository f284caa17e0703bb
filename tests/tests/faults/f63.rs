//! Frozen pipe and a drained tank.
//! Trade sheet, section 9, F63: common practice, no source; no flow, the pipe at 32 °F, power off until it is full.

use bench::{Action, Probe};
use drill::Order;
use plant::climate::Climate;
use plant::fault::{Defect, FaultId};
use plant::{Place, Tap, Wire};

use crate::in_vain::*;
use crate::technician::*;
use crate::work::*;

const WINTER: [(&str, f64); 1] = [("away", 30.0)];

fn in_frost() -> Order {
    Order { climate: Some(Climate::FrostLanding), day: Some(20), ..order(FaultId::F63, &WINTER) }
}

/// No water at the tap with the valve open, ice on the pipe; thawed, filled and purged before any power.
pub fn perfect() -> Work {
    let mut work = Work::at(&in_frost());
    work.acts(arrive());
    let cold = work.degrees(Probe::ColdPipe);
    near(&"cold pipe, °F", cold, 32.0, 1.5);
    let ice = work.step();
    work.act(Action::Tap { tap: Tap::Bath, opening: 1.0 });
    work.act(Action::Wait { minutes: 5.0 });
    work.look(Place::Taps);
    let dry = work.step();
    work.make_dead_outside();
    work.finds(&[ice, dry]);
    work.act(Action::ColdValve { opening: 0.0 });
    work.act(Action::Thaw);
    // Never drained by this technician: no hose to take off, no drain to shut.
    let filling = refill();
    work.acts(filling.into_iter().filter(|a| !matches!(a, Action::Drain { .. } | Action::Hose { .. })));
    work.acts(energise(work.slot()));
    work.amps(Wire::FeedA, 18.75);
    work.act(Action::WaitForCutOut);
    work.amps(Wire::FeedA, 0.0);
    work.acts(hand_over());
    work
}

#[test]
fn thawed_and_full_it_heats() {
    perfect().cured();
}

/// Power before water: the upper element glows in air.
#[test]
fn power_first_burns_the_element() {
    let mut work = Work::at(&in_frost());
    work.acts(arrive());
    let slot = work.slot();
    work.session.step(&Action::Breaker { slot, on: true });
    work.session.step(&Action::Wait { minutes: 10.0 });
    let left = work.session.home.inspect();
    assert!(left.contains(&Defect::ElementOpen(plant::Level::Upper)), "{left:?}");
}

#[test]
fn an_element_does_not() {
    let (_, verdict) = changed_in_error(&in_frost());
    assert!(!verdict.cure.is_right() && verdict.lost(drill::RuleId::ChangedInVain) > 0.0, "{verdict:#?}");
}
