//! What hurts, how much, and what the coach does about it.

use super::*;
use crate::person::{Harm, Severity, ShockZone};
use plant::Tap;

fn shock(outcome: &Outcome) -> Option<person::Shock> {
    outcome.harms.iter().find_map(|h| if let Harm::Shock(s) = h { Some(*s) } else { None })
}

fn touch(at: Screw) -> Action {
    Action::Touch { at: Touchable::Metal { point: screw(at) } }
}

/// Trade sheet 7.6 (computed from IEC 60479-1:2005): 120 V hand to hand drives 76 mA.
#[test]
fn a_bare_hand_on_a_live_screw() {
    let mut session = solo(cold_home());
    doing(&mut session, &uncover(Level::Upper));
    let outcome = session.step(&touch(Screw::H1));
    let shock = shock(&outcome).unwrap();
    assert!((shock.current.get() - 76e-3).abs() < 1.5e-3, "{shock:?}");
    assert_eq!(shock.zone, ShockZone::BeyondLetGo);
    assert!(has(&outcome, |f| matches!(f, Fact::WorkedUnproved { live: true, protected: false, .. })));
}

#[test]
fn gloves_keep_the_current_out() {
    let mut session = solo(cold_home());
    doing(&mut session, &[Action::Gloves { on: true }, Action::EyeProtection { on: true }]);
    doing(&mut session, &uncover(Level::Upper));
    let outcome = session.step(&touch(Screw::H1));
    assert_eq!(shock(&outcome), None);
    assert!(has(&outcome, |f| matches!(f, Fact::WorkedUnproved { live: true, protected: true, .. })));
}

/// Trade sheet 1.2: one screw of both elements is live though the thermostats are satisfied.
#[test]
fn a_satisfied_heater_still_bites() {
    let mut session = solo(home());
    doing(&mut session, &uncover(Level::Lower));
    assert!(shock(&session.step(&touch(Screw::LEa))).is_some());
}

#[test]
fn the_coach_stops_it_and_nothing_changes() {
    let mut session = Session::begin(job(cold_home(), Mode::Coached, &[]));
    doing(&mut session, &uncover(Level::Upper));
    let (home, clock) = (session.home.clone(), session.clock);
    let outcome = session.step(&touch(Screw::H1));
    let Shown::Stopped { harm } = outcome.shown else { panic!("{outcome:?}") };
    assert!(harm.severity() >= Severity::Injury);
    assert_eq!((&session.home, session.clock, session.me.stops), (&home, clock, 1));
    assert_eq!(session.log.len(), 4);
}

/// Landing one leg on the other's screw: thousands of amperes until the breaker's magnet acts.
#[test]
fn a_wire_across_the_legs_flashes_and_trips() {
    let mut session = solo(home());
    doing(&mut session, &uncover(Level::Upper));
    doing(&mut session, &[Action::Gloves { on: true }]);
    let lifted = Action::Lift { end: end(Wire::Strap, 1) };
    doing(&mut session, &[lifted]);
    let land = Action::Land { end: end(Wire::Strap, 1), screw: Screw::H3, torqued: true };
    let outcome = doing(&mut session, &[land]);
    let arc = outcome.harms.iter().find_map(|h| match h {
        Harm::ArcFlash { current, cleared_after, .. } => Some((current.get(), cleared_after.get())),
        _ => None,
    });
    let (current, cleared) = arc.unwrap();
    assert!((500.0..20_000.0).contains(&current), "{current}");
    assert!(cleared < 0.1, "{cleared}");
    let slot = slot(&session, Circuit::Heater);
    assert!(outcome.noticed.contains(&Noticed::BreakerTripped { slot }), "{outcome:?}");
    assert!(has(&outcome, |f| matches!(f, Fact::Miswired { .. })));
    let touched = outcome.facts.iter().filter(|f| matches!(f, Fact::WorkedUnproved { live: true, .. }));
    assert_eq!(touched.count(), 1, "{outcome:?}");
}

/// Trade sheet 2.7 (published): an element in air is gone in 30 to 45 s; a little later here, since the
/// dry run begins with a cold sheath.
#[test]
fn power_on_an_empty_tank_burns_the_element_out() {
    let mut session = solo(home());
    lock_out(&mut session);
    let drained = [
        Action::ColdValve { opening: 0.0 },
        Action::Hose { on: true },
        Action::Drain { opening: 1.0 },
        Action::Tap { tap: Tap::Bath, opening: 1.0 },
        Action::Wait { minutes: 60.0 },
    ];
    doing(&mut session, &drained);
    assert!(session.home.plant.fill() < 0.05, "{}", session.home.plant.fill());
    let slot = slot(&session, Circuit::Heater);
    let outcome =
        doing(&mut session, &[Action::Lock { slot, on: false }, Action::Breaker { slot, on: true }]);
    assert!(has(&outcome, |f| matches!(f, Fact::EnergisedDry { level: Level::Upper })), "{outcome:?}");
    assert!(has(&outcome, |f| matches!(f, Fact::Energised { full: false, purged: false, .. })));
    let later = doing(&mut session, &[Action::Wait { minutes: 2.0 }]);
    let mut harms = outcome.harms.iter().chain(&later.harms);
    assert!(harms.any(|h| matches!(h, Harm::ElementBurntOut { element: Level::Upper, .. })), "{later:?}");
}

/// No hose: the drain runs over the floor.
#[test]
fn draining_without_a_hose_floods() {
    let mut session = solo(home());
    doing(&mut session, &[Action::TellHousehold]);
    doing(&mut session, &[Action::Drain { opening: 1.0 }]);
    let outcome = doing(&mut session, &[Action::Wait { minutes: 10.0 }]);
    assert!(outcome.harms.iter().any(|h| matches!(h, Harm::Flood { .. })), "{outcome:?}");
    assert!(session.home.plant.plumbing.on_floor > Volume::litres(50.0));
}

/// An element unscrewed under a full tank with the cold valve open.
#[test]
fn an_element_out_of_a_full_tank_floods() {
    let mut session = solo(home());
    make_dead(&mut session, &[Screw::LEa, Screw::LEb]);
    let part = NewPart::asked_by(&session.home.plant.plate, Level::Lower);
    let outcome = doing(&mut session, &[Action::Replace { part }]);
    let spilt = outcome.harms.iter().find_map(|h| match h {
        Harm::Flood { volume } => Some(volume.to_litres()),
        _ => None,
    });
    assert!(spilt.is_some_and(|l| l > 10.0), "{outcome:?}");
    assert!(has(&outcome, |f| matches!(f, Fact::Changed { matches: true, needed: false, .. })));
    assert!(has(&outcome, |f| matches!(f, Fact::RepairedWithoutFinding)));
}

/// Water at 160 °F left running with nobody told (trade sheet 8: seconds to a burn, half for a child).
#[test]
fn scalding_water_with_nobody_warned() {
    let scalding = || {
        let mut home = home();
        home.plant.tank = home.plant.tank_at(Temperature::fahrenheit(160.0));
        solo(home)
    };
    let open = Action::Tap { tap: Tap::Bath, opening: 1.0 };
    let mut session = scalding();
    let outcome = doing(&mut session, std::slice::from_ref(&open));
    assert!(has(&outcome, |f| matches!(f, Fact::HotDischarge { .. })), "{outcome:?}");
    assert!(outcome.harms.iter().any(|h| matches!(h, Harm::Burn(b) if b.who == person::Who::Child)));
    let mut session = scalding();
    let outcome = doing(&mut session, &[Action::TellHousehold, open]);
    assert_eq!((outcome.facts, outcome.harms), (vec![], vec![]));
}

/// Water over boiling flashes at the tap: grave, and the end of the job.
#[test]
fn a_grave_injury_ends_the_job() {
    let mut boiling = home();
    boiling.plant.tank = boiling.plant.tank_at(Temperature::celsius(112.0));
    let mut session = solo(boiling.clone());
    let open = Action::Tap { tap: Tap::Bath, opening: 1.0 };
    let outcome = session.step(&open);
    assert!(outcome.harms.iter().any(|h| matches!(h, Harm::Steam { .. })), "{outcome:?}");
    assert_eq!(session.ended, Some(Ending::Injured));
    assert!(has(&outcome, |f| matches!(f, Fact::Ended { how: Ending::Injured })));
    let mut coached = Session::begin(job(boiling, Mode::Coached, &[]));
    assert!(matches!(coached.step(&open).shown, Shown::Stopped { .. }));
    assert_eq!(coached.ended, None);
}

/// Water at 167 °F burns a child who expects nothing through the skin (trade sheet 8.1: seconds to a third-degree burn
/// of an adult, half for a child): the technician is unhurt, and the job goes on to whoever has to be called.
#[test]
fn somebody_elses_grave_burn_leaves_the_call_to_make() {
    let mut session = solo(tank_at(75.0));
    let outcome = session.step(&Action::Tap { tap: Tap::Bath, opening: 1.0 });
    let burn = burns(&outcome, person::Source::Water).unwrap_or_else(|| panic!("{outcome:?}"));
    assert_eq!((burn.who, burn.severity()), (person::Who::Child, Severity::Grave));
    assert!(outcome.harms.iter().any(Harm::needs_ambulance));
    assert_eq!(session.ended, None);
    session.step(&Action::StopAndCall { whom: Helper::Ambulance });
    assert_eq!(session.ended, Some(Ending::Called { whom: Helper::Ambulance }));
}

/// Measuring under power with the junction box open is procedure (trade sheet 10.11); the compartments are not.
#[test]
fn power_on_with_a_compartment_open_is_told() {
    let energise = |cover| {
        let mut session = solo(home());
        lock_out(&mut session);
        let slot = slot(&session, Circuit::Heater);
        let cover = Action::Cover { which: cover, off: true };
        doing(&mut session, &[cover, Action::Lock { slot, on: false }, Action::Breaker { slot, on: true }])
    };
    let open = |o: &Outcome| has(o, |f| matches!(f, Fact::EnergisedOpen));
    assert!(!open(&energise(Cover::JunctionBox)));
    assert!(open(&energise(Cover::Lower)));
}

fn tank_at(celsius: f64) -> Home {
    let mut home = home();
    home.plant.tank = home.plant.tank_at(Temperature::celsius(celsius));
    home
}

fn burns(outcome: &Outcome, source: person::Source) -> Option<person::Burn> {
    outcome.harms.iter().find_map(|harm| match harm {
        person::Harm::Burn(burn) if burn.source == source => Some(*burn),
        _ => None,
    })
}

/// Without a hose hot water splashes whoever opens the drain; a hose keeps it off.
#[test]
fn the_drain_splashes_without_a_hose() {
    let mut session = solo(tank_at(80.0));
    doing(&mut session, &[Action::TellHousehold]);
    let outcome = session.step(&Action::Drain { opening: 1.0 });
    let burn = burns(&outcome, person::Source::Splash).unwrap_or_else(|| panic!("{outcome:?}"));
    assert!(burn.who == person::Who::Technician && burn.degree >= person::Degree::First, "{burn:?}");
    let mut session = solo(tank_at(80.0));
    doing(&mut session, &[Action::TellHousehold, Action::Hose { on: true }]);
    let outcome = session.step(&Action::Drain { opening: 1.0 });
    assert_eq!(burns(&outcome, person::Source::Splash), None);
}

/// Water above boiling flashes at the relief outlet and burns whoever holds the lever.
#[test]
fn steam_burns_at_the_relief_outlet() {
    let mut session = solo(tank_at(120.0));
    let outcome = session.step(&Action::ReliefLever { up: true });
    assert!(outcome.harms.iter().any(|h| matches!(h, person::Harm::Steam { .. })), "{outcome:?}");
    let burn = burns(&outcome, person::Source::Steam).unwrap();
    assert!(burn.who == person::Who::Technician && burn.degree >= person::Degree::Second, "{burn:?}");
    assert_eq!(session.ended, Some(Ending::Injured));
}

/// F59: after two weeks at rest gas that burns comes before the water.
#[test]
fn hydrogen_at_the_tap_is_told() {
    let mut idle = home();
    idle.plant.plumbing.hydrogen = Volume::litres(6.0);
    let mut session = solo(idle);
    doing(&mut session, &[Action::TellHousehold]);
    let told = |outcome: &Outcome| {
        outcome.harms.iter().find_map(|harm| match harm {
            person::Harm::FlammableGas { volume } => Some(volume.to_litres()),
            _ => None,
        })
    };
    let first = session.step(&Action::Bucket { tap: plant::Tap::Bath, volume: Volume::gallons(5.0) });
    assert!(told(&first).is_some_and(|l| (0.5..=6.1).contains(&l)), "{first:?}");
    doing(&mut session, &[Action::Bucket { tap: plant::Tap::Bath, volume: Volume::gallons(15.0) }]);
    let last = session.step(&Action::Bucket { tap: plant::Tap::Bath, volume: Volume::gallons(2.0) });
    assert_eq!(told(&last), None);
}
