//! The first call worked by whoever does what the guide says, and by whoever does something else in between.

use bench::{Action, Cover, Session};
use drill::{Drill, Rubric};
use plant::Tap;
use quantity::Draw;

use super::*;
use crate::drill::known::Known;

const LONGEST: usize = 220;

/// Does what the guide says until the job is over; before each act `meddle` may do something of its own.
fn follow(mut meddle: impl FnMut(usize) -> Vec<Action>) -> (Drill, Session) {
    let drill = drill::make(&first_call()).unwrap();
    let mut session = Session::begin(drill.job.clone());
    for at in 0..LONGEST {
        for act in meddle(at) {
            session.step(&act);
        }
        if session.ended.is_some() {
            return (drill, session);
        }
        let next = next(&session, &Known::of(&session));
        let act = next.action.unwrap_or_else(|| panic!("{}: {:?}", next.say, session.log.last()));
        session.step(&act);
    }
    let tail: Vec<_> = session.log.iter().rev().take(4).map(|e| (&e.action, &e.outcome.shown)).collect();
    panic!("never over: {tail:?}");
}

#[test]
fn whoever_follows_the_guide_loses_no_point() {
    let (drill, session) = follow(|_| Vec::new());
    let score = drill::judge(&drill, &session, &Rubric::plain());
    let acts: Vec<_> = session.log.iter().map(|entry| &entry.action).collect();
    assert!(score.cured && score.lines.is_empty() && score.total() == 100.0, "{score:?} {acts:?}");
    assert!(session.log.len() < 75, "{}", session.log.len());
}

/// Acts out of turn, some of them foolish; none that ends the job.
fn out_of_turn(draw: &mut Draw) -> Action {
    let all = [
        Action::Wait { minutes: 5.0 },
        Action::Cover { which: Cover::Lower, off: true },
        Action::Cover { which: Cover::Upper, off: false },
        Action::ColdValve { opening: 1.0 },
        Action::ColdValve { opening: 0.0 },
        Action::Tap { tap: Tap::Kitchen, opening: 0.0 },
        Action::Drain { opening: 0.0 },
        Action::Gloves { on: false },
        Action::Breaker { slot: 2, on: true },
        Action::Lock { slot: 2, on: false },
        Action::Finding { fault: None, evidence: Vec::new() },
        Action::SpareLeads,
    ];
    let at = draw.index(all.len());
    all[at].clone()
}

#[test]
fn the_guide_finds_its_way_back_whatever_is_done_in_between() {
    for seed in 0..8 {
        let mut draw = Draw::new(seed, "out of turn");
        let (drill, session) = follow(|at| {
            let now = at > 0 && at < 90 && draw.chance(0.15);
            if now { vec![out_of_turn(&mut draw)] } else { Vec::new() }
        });
        let score = drill::judge(&drill, &session, &Rubric::plain());
        assert!(score.cured, "{seed}: {:?}", session.log.iter().map(|e| &e.action).collect::<Vec<_>>());
    }
}

#[test]
fn power_is_proved_off_before_a_hand_goes_in_and_water_is_in_before_it_comes_back() {
    let (_, session) = follow(|_| Vec::new());
    let first = |is: fn(&Action) -> bool| session.log.iter().position(|entry| is(&entry.action)).unwrap();
    let order = [
        first(|a| matches!(a, Action::TellHousehold)),
        first(|a| matches!(a, Action::Breaker { on: false, .. })),
        first(|a| matches!(a, Action::Lock { on: true, .. })),
        first(|a| matches!(a, Action::Cover { off: true, .. })),
        first(|a| matches!(a, Action::TryStart)),
        first(|a| matches!(a, Action::ProveMeter { .. })),
        first(|a| matches!(a, Action::Meter { .. })),
        first(|a| matches!(a, Action::Lift { .. })),
        first(|a| matches!(a, Action::Finding { .. })),
        first(|a| matches!(a, Action::Drain { .. })),
        first(|a| matches!(a, Action::Replace { .. })),
        first(|a| matches!(a, Action::ColdValve { opening } if *opening > 0.0)),
        first(|a| matches!(a, Action::Lock { on: false, .. })),
        first(|a| matches!(a, Action::Breaker { on: true, .. })),
        first(|a| matches!(a, Action::WaitForCutOut)),
        first(|a| matches!(a, Action::TellResult)),
    ];
    assert!(order.is_sorted(), "{order:?}");
}
