//! Wrong installations beside the fault: seen they have to be told, put right they have not; each is one reading or look.

use bench::{Action, Observation, Shown, Sight, Trap, Writing};
use drill::{Level as How, Order, RuleId};
use plant::fault::{FaultId, PartKind};
use plant::{Discharge, Home, Level, Place};

use crate::technician::*;
use crate::work::*;

/// An order of the tests' house with another seed, with a trap at a hard level, in which that was laid.
fn laid(asked: impl Fn(&Home) -> bool) -> Order {
    let hard = |seed| Order {
        seed,
        level: Some(How::Hard),
        traps: vec![Trap::SomebodyResets],
        ..order(FaultId::F12, &[])
    };
    let mut found = (0..200).map(hard).filter(|order| asked(&drill::make(order).unwrap().job.home));
    found.next().expect("a house like this among 200")
}

fn seized(home: &Home) -> bool {
    home.plant.plumbing.relief.blocked && home.installation.discharge != Discharge::Capped
}

fn lost(work: &Work) -> [f64; 2] {
    let lines = work.verdict().score.lines;
    [RuleId::HazardUnreported, RuleId::ReportedAmiss]
        .map(|rule| lines.iter().filter(|line| line.rule == rule).map(|line| line.points).sum())
}

/// Seen and not told it costs; told, put right, or never seen, it does not.
fn told(order: &Order, what: Observation, sees: impl Fn(&mut Work), part: PartKind) {
    let job = |looks: bool, tells: bool, mends: bool| {
        let mut work = Work::at(order);
        work.acts(arrive());
        if looks {
            sees(&mut work);
        }
        if tells {
            work.act(Action::Report { what });
        }
        if mends {
            work.make_dead_outside();
            work.fits_drained(part);
        }
        work.acts(hand_over());
        lost(&work)
    };
    assert_eq!(job(true, false, false), [2.0, 0.0], "{what:?} seen and not told");
    assert_eq!(job(true, true, false), [0.0, 0.0], "{what:?} seen and told");
    assert_eq!(job(false, false, false), [0.0, 0.0], "{what:?} never seen");
    assert_eq!(job(true, false, true), [0.0, 0.0], "{what:?} put right");
}

fn lever(work: &mut Work) -> Vec<Sight> {
    let Shown::DoneWith { sights } = work.act(Action::ReliefLever { up: true }).shown else { panic!() };
    work.act(Action::ReliefLever { up: false });
    sights
}

#[test]
fn a_capped_pipe_is_seen_at_its_end() {
    let order = laid(|home| home.installation.discharge == Discharge::Capped);
    let sees = |work: &mut Work| {
        let sight = Sight::Discharge { pipe: Discharge::Capped };
        assert!(work.look(Place::Relief).contains(&sight));
        // Behind a cap that was seen the valve is not told as well.
        assert_eq!(lever(work), [Sight::LeverNothing]);
    };
    told(&order, Observation::CappedDischarge, sees, PartKind::ReliefValve);
}

#[test]
fn a_seized_valve_gives_nothing_to_its_lever() {
    let sees = |work: &mut Work| assert_eq!(lever(work), [Sight::LeverNothing]);
    told(&laid(seized), Observation::BlockedRelief, sees, PartKind::ReliefValve);
}

#[test]
fn a_bridged_limit_is_seen_behind_the_upper_cover() {
    let order = laid(|home| home.installation.bridged);
    let sees = |work: &mut Work| {
        work.acts(open(Level::Upper));
        assert!(work.look(Place::UpperCompartment).contains(&Sight::LimitBridged));
    };
    told(&order, Observation::BridgedLimit, sees, PartKind::Limit);
}

#[test]
fn another_element_is_read_off_its_stamp_beside_the_plate() {
    let level = Level::Upper;
    let order = laid(|home| home.installation.other_element.is_some_and(|(at, _)| at == level));
    let stamp = |work: &mut Work| {
        work.acts(open(level));
        let shown = work.act(Action::Read { what: Writing::StampUpper }).shown;
        assert!(matches!(shown, Shown::Stamp { rating, .. } if rating.volts.get() == 208.0), "{shown:?}");
    };
    let both = |work: &mut Work| {
        work.act(Action::Read { what: Writing::Plate });
        stamp(work);
    };
    told(&order, Observation::OtherElement, both, PartKind::UpperElement);
    // Without the plate nobody knows that it is another.
    let mut work = Work::at(&order);
    work.acts(arrive());
    stamp(&mut work);
    work.acts(hand_over());
    assert_eq!(lost(&work), [0.0, 0.0]);
}

#[test]
fn what_was_not_laid_is_not_told() {
    let sound = laid(|home| home.installation == plant::Installation::default() && !seized(home));
    for what in [
        Observation::CappedDischarge,
        Observation::BlockedRelief,
        Observation::BridgedLimit,
        Observation::OtherElement,
    ] {
        let mut work = Work::at(&sound);
        work.acts(arrive());
        work.act(Action::Report { what });
        work.acts(hand_over());
        assert_eq!(lost(&work), [0.0, 1.0], "{what:?}");
    }
}
