//! A wait in pieces is the wait, and one that was stopped is the shorter wait, to the bit.

use plant::Tap;

use super::*;
use crate::person::Harm;

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

/// A family of teenagers on a Wednesday from nine: washing machines and showers in the afternoon.
fn lived_in(home: Home) -> Session {
    let mut job = job(home, Mode::Solo, &[]);
    job.home.setting.household = plant::household::HouseholdKind::Teenagers;
    Session::begin(job)
}

fn used(outcome: &Outcome) -> Vec<(Seconds, Tap, Went)> {
    let Shown::DoneWith { sights } = &outcome.shown else { panic!("{outcome:?}") };
    let told = |sight: &Sight| match sight {
        Sight::Used { at, tap, went, .. } => Some((*at, *tap, *went)),
        _ => None,
    };
    sights.iter().filter_map(told).collect()
}

#[test]
fn people_who_are_let_draw_what_they_mean_to() {
    let mut session = lived_in(home());
    let books = |s: &Session| s.home.plant.plumbing.ledger.taps.map(|store| store.mass.get());
    let before = books(&session);
    let outcome = session.step(&Action::LetThemUse { minutes: 600.0 });
    let told = used(&outcome);
    // Half past four the machine, half past five a shower, at seven the dishes: each within a quarter of an hour.
    let hours: Vec<f64> = told.iter().map(|(at, ..)| at.to_hours()).collect();
    assert_eq!(
        told.iter().map(|(_, tap, _)| *tap).collect::<Vec<_>>(),
        [Tap::Laundry, Tap::Shower, Tap::Kitchen]
    );
    for (hour, meant) in hours.iter().zip([16.6, 17.6, 19.0]) {
        assert!((hour - meant).abs() < 0.25, "{hour} {meant}");
    }
    assert_eq!(
        told.iter().map(|(.., went)| *went).collect::<Vec<_>>(),
        [Went::Unfelt, Went::Well, Went::Well]
    );
    for tap in [Tap::Laundry, Tap::Shower, Tap::Kitchen] {
        let ran = books(&session)[tap.index()] - before[tap.index()];
        assert!(ran > 5.0, "{tap:?} {ran} kg");
    }
    assert!(session.home.plant.plumbing.taps.iter().all(|tap| *tap <= 0.0), "a tap left open");
    // The heater heats again for it, and nothing is drawn while nobody is let.
    assert!(outcome.noticed.iter().any(|one| matches!(one, Noticed::Click { .. })));
    let quiet = lived_in(home()).step(&Action::Wait { minutes: 600.0 });
    assert!(used(&quiet).is_empty());
}

#[test]
fn what_people_tell_is_what_the_heater_gives() {
    let mut off = lived_in(cold_home());
    let slot = slot(&off, Circuit::Heater);
    doing(&mut off, &[Action::Breaker { slot, on: false }]);
    let cold = used(&off.step(&Action::LetThemUse { minutes: 600.0 }));
    assert!(cold.iter().any(|(.., went)| *went == Went::NeverWarm), "{cold:?}");
    let mut shut = lived_in(home());
    doing(&mut shut, &[Action::ColdValve { opening: 0.0 }]);
    let dry = used(&shut.step(&Action::LetThemUse { minutes: 600.0 }));
    assert!(dry.len() == 3 && dry.iter().any(|(.., went)| matches!(went, Went::Dry | Went::Spat)), "{dry:?}");
}

/// Water that makes one pull the hand away is met by whoever was not warned; water a little over the label's 120 °F is
/// what people know of their own taps.
#[test]
fn people_let_use_water_have_to_be_warned_of_what_burns() {
    let at = |fahrenheit: f64, told: bool| {
        let mut home = home();
        home.plant.tank = home.plant.tank_at(Temperature::fahrenheit(fahrenheit));
        home.plant.thermostats.iter_mut().for_each(|one| one.dial = Temperature::fahrenheit(fahrenheit));
        let mut session = lived_in(home);
        if told {
            doing(&mut session, &[Action::TellHousehold]);
        }
        let outcome = session.step(&Action::LetThemUse { minutes: 600.0 });
        let met = has(&outcome, |f| matches!(f, Fact::HotDischarge { .. }));
        (met, outcome.harms.iter().any(|harm| matches!(harm, Harm::Burn(_))))
    };
    assert_eq!(at(125.0, false), (false, false));
    assert_eq!(at(160.0, false), (true, true));
    assert_eq!(at(160.0, true), (false, false));
}

#[test]
fn living_in_pieces_is_the_whole_and_stops_where_it_is() {
    let session = lived_in(home());
    let action = Action::LetThemUse { minutes: 600.0 };
    let mut waiting = Waiting::begin(&session, &action).unwrap();
    while waiting.go_on() {}
    let (ended, outcome) = waiting.end();
    let (whole, said) = reduce(&session, &action);
    assert!(same(&ended, &whole) && outcome == said);
    // In the middle of the shower.
    let mut waiting = Waiting::begin(&session, &action).unwrap();
    while waiting.clock() < Seconds::hours(8.7) && waiting.go_on() {}
    let clock = waiting.clock();
    let minutes = (clock - session.clock).to_minutes();
    let (stopped, _) = waiting.stopped().unwrap().end();
    assert!(same(&stopped, &reduce(&session, &Action::LetThemUse { minutes }).0));
    assert!((stopped.clock - clock).get().abs() < 1e-6);
    assert!(stopped.home.plant.plumbing.taps.iter().all(|tap| *tap <= 0.0));
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
