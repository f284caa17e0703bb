//! A wait in pieces is the wait, and one that was stopped is the shorter wait, to the bit.

use plant::Tap;

use super::*;

fn same(one: &Session, other: &Session) -> bool {
    serde_json::to_vec(one).unwrap() == serde_json::to_vec(other).unwrap()
}

/// A cold house that heats, one whose tap runs, one with a breaker off that somebody switches on again.
fn houses() -> Vec<Session> {
    let mut running = solo(home());
    doing(&mut running, &[Action::Tap { tap: Tap::Bath, opening: 0.3 }]);
    let mut off = Session::begin(job(cold_home(), Mode::Coached, &[Trap::SomebodyResets]));
    let slot = slot(&off, Circuit::Heater);
    doing(&mut off, &[Action::Breaker { slot, on: false }]);
    vec![solo(cold_home()), running, off]
}

#[test]
fn pieces_are_the_whole() {
    for session in houses() {
        let waits = [3.0, 10.0, 47.5, 240.0].map(|minutes| Action::Wait { minutes });
        for action in waits.into_iter().chain([Action::WaitForCutOut]) {
            let mut waiting = Waiting::begin(&session, &action).unwrap();
            let mut before = waiting.clock();
            while waiting.go_on() {
                assert!(waiting.clock() > before && waiting.share() < 1.0, "{action:?}");
                before = waiting.clock();
            }
            let (ended, outcome) = waiting.end();
            let (whole, said) = reduce(&session, &action);
            assert!(same(&ended, &whole) && outcome == said, "{action:?}");
        }
    }
}

#[test]
fn one_that_is_stopped_is_the_shorter_one() {
    let mut stopped_ones = 0;
    for session in houses() {
        for action in [Action::Wait { minutes: 240.0 }, Action::WaitForCutOut] {
            for pieces in 1..5 {
                let mut waiting = Waiting::begin(&session, &action).unwrap();
                let more = (0..pieces).all(|_| waiting.go_on());
                let clock = waiting.clock();
                // Where no thermostat calls there is nothing to wait for.
                let Some(stopped) = waiting.stopped() else { continue };
                assert!(more);
                let (ended, _) = stopped.end();
                stopped_ones += 1;
                let minutes = (clock - session.clock).to_minutes();
                assert!(same(&ended, &reduce(&session, &Action::Wait { minutes }).0), "{action:?} {minutes}");
                assert_eq!(ended.clock, clock);
            }
        }
    }
    assert!(stopped_ones >= 16, "{stopped_ones}");
}

#[test]
fn what_is_no_wait_does_not_begin() {
    let mut session = solo(home());
    let minutes = [f64::NAN, -1.0, 0.0, 1440.1];
    assert!(minutes.iter().all(|&minutes| Waiting::begin(&session, &Action::Wait { minutes }).is_none()));
    assert!(Waiting::begin(&session, &Action::TellHousehold).is_none());
    assert!(Waiting::begin(&session, &Action::Wait { minutes: 5.0 }).unwrap().stopped().is_none());
    session.step(&Action::HandOver);
    assert!(Waiting::begin(&session, &Action::WaitForCutOut).is_none());
}
