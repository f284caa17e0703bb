//! Dip tube broken or missing.
//! Trade sheet, section 9, F37: common practice, no source; a fall of 15 °F within 5 to 10 gallons.

use bench::{Action, Helper, Licence, Probe, Shown};
use drill::Order;
use plant::fault::{FaultId, PartKind};
use plant::{Level, Place, Tap, Wire};

use crate::in_vain::*;
use crate::technician::*;
use crate::work::*;

fn short(licence: Licence, missing: f64) -> Order {
    Order { licence, ..order(FaultId::F37, &[("missing", missing)]) }
}

/// A full tank, elements that pass, and yet the bucket turns cold while the drain still runs hot.
fn found(work: &mut Work) -> [u32; 3] {
    work.acts(arrive());
    work.act(Action::WaitForCutOut);
    let idle = work.amps(Wire::FeedA, 0.0);
    let bucket = work.draw(12.0);
    let drawn = work.step();
    near(&"first of the bucket, °F", bucket.first.to_fahrenheit(), 120.0, 8.0);
    let fell = bucket.fell_after.expect("it falls").to_gallons();
    // 36 gallons stirred through, 68 °F over the inlet, have fallen by 15 °F after 9; what runs out before the
    // first steady reading comes on top.
    assert!((2.0..=11.0).contains(&fell), "fell after {fell} gallons");
    let drain = at_the_drain(work);
    assert!(drain > 80.0, "{drain} °F at the drain");
    let drained = work.step() - 2;
    [idle, drawn, drained]
}

/// Water at the drain cock, in °F.
fn at_the_drain(work: &mut Work) -> f64 {
    work.acts([Action::Hose { on: true }, Action::Drain { opening: 1.0 }]);
    let shown = work.act(Action::Thermometer { at: Probe::Drain }).shown;
    work.acts([Action::Drain { opening: 0.0 }, Action::Hose { on: false }]);
    match shown {
        Shown::Temperature { reading } => reading.to_fahrenheit(),
        other => panic!("{other:?}"),
    }
}

/// The same draw with a whole tube: hot at the tap, cold at the drain.
#[test]
fn a_whole_tube_reads_otherwise() {
    let mut work = Work::at(&order(FaultId::F04, &[]));
    work.acts(arrive());
    work.act(Action::WaitForCutOut);
    assert!(work.draw(12.0).fell_after.is_none());
    let drain = at_the_drain(&mut work);
    assert!(drain < 65.0, "{drain} °F at the drain");
}

pub fn perfect() -> Work {
    worked(0.0)
}

fn worked(missing: f64) -> Work {
    let mut work = Work::at(&short(Licence::Plumber, missing));
    let evidence = found(&mut work);
    work.acts(open(Level::Upper));
    work.acts(open(Level::Lower));
    work.make_dead(&[]);
    work.finds(&evidence);
    work.acts([Action::ColdValve { opening: 0.0 }, Action::Tap { tap: Tap::Laundry, opening: 1.0 }]);
    work.fits(PartKind::DipTube);
    work.acts([
        Action::ColdValve { opening: 1.0 },
        Action::Wait { minutes: 3.0 },
        Action::Tap { tap: Tap::Laundry, opening: 0.0 },
        Action::ReliefLever { up: true },
        Action::ReliefLever { up: false },
        Action::Look { at: Place::HeaterTop },
    ]);
    work.proves(18.75);
    let bucket = work.draw(16.0);
    assert!(bucket.fell_after.is_none(), "{bucket:?}");
    work.act(Action::WaitForCutOut);
    work.acts(hand_over());
    work
}

#[test]
fn the_right_part_cures() {
    perfect().cured();
    worked(1.0).cured();
}

#[test]
fn an_electrician_locks_off_and_calls_a_plumber() {
    let mut work = Work::at(&short(Licence::Electrician, 0.0));
    let evidence = found(&mut work);
    let slot = work.slot();
    work.finds(&evidence);
    work.acts([Action::Breaker { slot, on: false }, Action::Lock { slot, on: true }, close_box()]);
    work.acts([Action::TellResult, Action::StopAndCall { whom: Helper::Plumber }]);
    work.handed_on(Helper::Plumber);
}

#[test]
fn an_element_does_not() {
    assert_in_vain(&short(Licence::Plumber, 0.0));
}
