//! Both calls worked by whoever does what the guide says, and by whoever does something else in between.

use bench::{Action, Cover, Session};
use drill::{Drill, Rubric};
use plant::Tap;
use quantity::Draw;

use super::*;
use crate::drill::known::Known;

const LONGEST: usize = 220;

/// Does what the guide says until the job is over; before each act `meddle` may do something of its own.
fn follow(call: Guided, mut meddle: impl FnMut(usize) -> Vec<Action>) -> (Drill, Session) {
    let drill = drill::make(&call.order()).unwrap();
    let mut session = Session::begin(drill.job.clone());
    for at in 0..LONGEST {
        for act in meddle(at) {
            session.step(&act);
        }
        if session.ended.is_some() {
            return (drill, session);
        }
        let next = next(call, &session, &Known::of(&session));
        let act = next.action.unwrap_or_else(|| panic!("{}: {:?}", next.say, session.log.last()));
        session.step(&act);
    }
    let tail: Vec<_> = session.log.iter().rev().take(4).map(|e| (&e.action, &e.outcome.shown)).collect();
    panic!("never over: {tail:?}");
}

#[test]
fn whoever_follows_the_guide_loses_no_point() {
    for (call, most) in [(Guided::First, 45), (Guided::Second, 75)] {
        let (drill, session) = follow(call, |_| Vec::new());
        let score = drill::judge(&drill, &session, &Rubric::plain());
        let acts: Vec<_> = session.log.iter().map(|entry| &entry.action).collect();
        assert!(score.cured && score.lines.is_empty() && score.total() == 100.0, "{score:?} {acts:?}");
        assert!(session.log.len() < most, "{}", session.log.len());
    }
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
    for (seed, call) in (0..8).flat_map(|seed| Guided::ALL.map(|call| (seed, call))) {
        let mut draw = Draw::new(seed, "out of turn");
        let (drill, session) = follow(call, |at| {
            let now = at > 0 && at < 90 && draw.chance(0.15);
            if now { vec![out_of_turn(&mut draw)] } else { Vec::new() }
        });
        let score = drill::judge(&drill, &session, &Rubric::plain());
        assert!(score.cured, "{seed}: {:?}", session.log.iter().map(|e| &e.action).collect::<Vec<_>>());
    }
}

/// Acts of which each has to come after the one before it.
type Order = Vec<fn(&Action) -> bool>;

#[test]
fn power_is_proved_off_before_a_hand_goes_in_and_water_is_in_before_it_comes_back() {
    let dead: Order = vec![
        |a| matches!(a, Action::TellHousehold),
        |a| matches!(a, Action::Breaker { on: false, .. }),
        |a| matches!(a, Action::Lock { on: true, .. }),
        |a| matches!(a, Action::Cover { off: true, .. }),
        |a| matches!(a, Action::TryStart),
        |a| matches!(a, Action::ProveMeter { .. }),
        |a| matches!(a, Action::Meter { .. }),
    ];
    let water: Order = vec![
        |a| matches!(a, Action::Lift { .. }),
        |a| matches!(a, Action::Finding { .. }),
        |a| matches!(a, Action::Drain { .. }),
        |a| matches!(a, Action::Replace { .. }),
        |a| matches!(a, Action::ColdValve { opening } if *opening > 0.0),
    ];
    let part: Order = vec![|a| matches!(a, Action::Finding { .. }), |a| matches!(a, Action::Replace { .. })];
    let proof: Order = vec![
        |a| matches!(a, Action::Lock { on: false, .. }),
        |a| matches!(a, Action::Breaker { on: true, .. }),
        |a| matches!(a, Action::Clamp { .. }),
        |a| matches!(a, Action::WaitForCutOut),
        |a| matches!(a, Action::TellResult),
    ];
    for (call, middle) in [(Guided::First, &part), (Guided::Second, &water)] {
        let (_, session) = follow(call, |_| Vec::new());
        let first =
            |is: &fn(&Action) -> bool| session.log.iter().position(|entry| is(&entry.action)).unwrap();
        let order: Vec<_> = dead.iter().chain(middle).chain(&proof).map(first).collect();
        assert!(order.is_sorted(), "{call:?} {order:?}");
    }
}

#[test]
fn the_meter_is_proved_before_and_after_and_every_screw_under_a_hand_is_read_to_a_proved_ground() {
    for call in Guided::ALL {
        let (_, session) = follow(call, |_| Vec::new());
        let at = |is: &dyn Fn(&Action) -> bool| -> Vec<usize> {
            (0..session.log.len()).filter(|at| is(&session.log[*at].action)).collect()
        };
        let proofs = at(&|act| matches!(act, Action::ProveMeter { .. }));
        let dead = at(&|act| matches!(act, Action::Meter { function: bench::MeterFunction::LowVolts, .. }));
        let hand = at(&|act| matches!(act, Action::Lift { .. } | Action::Replace { .. }))[0];
        assert!(
            dead.iter().all(|read| (proofs[0]..proofs[1]).contains(read)),
            "{call:?} {proofs:?} {dead:?}"
        );
        assert!(proofs[1] < hand, "{call:?}");
        let unproved = |fact: &bench::Fact| {
            matches!(fact, bench::Fact::WorkedUnproved { .. } | bench::Fact::OhmsUnproved { .. })
        };
        assert!(!session.log.iter().any(|entry| entry.outcome.facts.iter().any(unproved)), "{call:?}");
    }
}
