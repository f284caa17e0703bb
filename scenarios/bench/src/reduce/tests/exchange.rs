//! A whole heater changed, act by act: what each needs before it, and what comes of one left out.

use super::*;
use plant::heater::Rating;
use quantity::{Pressure, Watts};

fn look(session: &mut Session, at: plant::Place) -> Vec<Sight> {
    match doing(session, &[Action::Look { at }]).shown {
        Shown::Sights { sights, .. } => sights,
        other => panic!("{other:?}"),
    }
}

#[test]
fn a_heater_is_carried_off_only_empty() {
    let mut session = solo(home());
    doing(&mut session, &[Action::ColdValve { opening: 0.0 }]);
    let out = Action::CarryOut { helped: true };
    let why = |session: &mut Session| match session.step(&out).shown {
        Shown::Refused { why } => why,
        other => panic!("{other:?}"),
    };
    assert_eq!(why(&mut session), Refusal::PipesOn);
    doing(&mut session, &[Action::PartPipes]);
    assert!(matches!(why(&mut session), Refusal::WireLanded { .. }));
    leads_off(&mut session);
    assert!(matches!(why(&mut session), Refusal::TankNotDrained { .. }));
    let empty = [Action::Hose { on: true }, Action::Drain { opening: 1.0 }, Action::Wait { minutes: 60.0 }];
    doing(&mut session, &empty);
    doing(&mut session, std::slice::from_ref(&out));
    assert_eq!(why(&mut session), Refusal::NotHere);
}

/// Junction box open, dead, each lead of the heater off its splice.
fn leads_off(session: &mut Session) {
    make_dead(session, &[Screw::UEa]);
    let lift = [(Wire::FeedA, 0), (Wire::FeedB, 0), (Wire::Bond, 0)];
    let acts = lift.map(|(wire, side)| Action::Lift { end: end(wire, side) });
    doing(session, &[Action::Cover { which: Cover::JunctionBox, off: true }]);
    doing(session, &acts);
}

/// Old one out: drained, dead, leads and pipes off.
fn emptied_place() -> Session {
    let mut session = solo(home());
    leads_off(&mut session);
    drained_to_empty(&mut session);
    doing(&mut session, &[Action::PartPipes, Action::CarryOut { helped: true }]);
    session
}

fn set(watts: f64, gallons: f64) -> Action {
    let rating = Rating { watts: Watts(watts), volts: Volts(240.0) };
    Action::SetHeater { nominal: Volume::gallons(gallons), rating }
}

/// Nothing of it is there while it is out, and the new one stands there bare: no pipe, no lead, no relief valve.
#[test]
fn a_new_heater_comes_bare() {
    let mut session = solo(home());
    assert_eq!(session.step(&set(4500.0, 40.0)).shown, Shown::Refused { why: Refusal::HeaterStands });
    let mut session = emptied_place();
    for place in [plant::Place::UpperCompartment, plant::Place::JunctionBox] {
        let shown = session.step(&Action::Look { at: place }).shown;
        assert_eq!(shown, Shown::Refused { why: Refusal::NotHere });
    }
    assert_eq!(look(&mut session, plant::Place::HeaterTop), [Sight::NoHeater]);
    let shown = session.step(&Action::Hose { on: true }).shown;
    assert_eq!(shown, Shown::Refused { why: Refusal::NotHere });
    let outcome = doing(&mut session, &[set(4500.0, 40.0)]);
    assert!(has(&outcome, |f| matches!(f, Fact::Changed { matches: true, needed: false, .. })));
    assert!(look(&mut session, plant::Place::HeaterTop).contains(&Sight::PipesOff));
    assert!(look(&mut session, plant::Place::Relief).contains(&Sight::OpenPort));
    let seen = look(&mut session, plant::Place::JunctionBox);
    assert_eq!(seen.iter().filter(|sight| matches!(sight, Sight::Lifted { .. })).count(), 3, "{seen:?}");
    assert_eq!(
        session.step(&Action::ReliefLever { up: true }).shown,
        Shown::Refused { why: Refusal::NotHere }
    );
}

/// More watts than the branch circuit carries, or fewer gallons: not the one that belongs there.
#[test]
fn a_new_heater_has_to_suit_plate_and_circuit() {
    for (act, right) in [(set(4500.0, 40.0), true), (set(5500.0, 40.0), false), (set(4500.0, 30.0), false)] {
        let outcome = doing(&mut emptied_place(), &[act]);
        let suits = |f: &Fact| matches!(f, Fact::Changed { matches, .. } if *matches == right);
        assert!(outcome.facts.iter().any(suits), "{outcome:?}");
    }
}

/// With the cold valve open its pipe runs out where it is undone, until somebody shuts it.
#[test]
fn a_pipe_undone_under_pressure_floods_until_it_is_shut() {
    let mut session = solo(home());
    let flood = doing(&mut session, &[Action::TellHousehold, Action::PartPipes]);
    assert!(flood.harms.iter().any(|h| matches!(h, person::Harm::Flood { .. })), "{flood:?}");
    let spilled = |session: &Session| session.me.spilled.to_litres();
    let first = spilled(&session);
    doing(&mut session, &[Action::Wait { minutes: 1.0 }]);
    let running = spilled(&session);
    assert!(first > 5.0 && running > 2.0 * first, "{first} L, then {running} L");
    doing(&mut session, &[Action::ColdValve { opening: 0.0 }]);
    let shut = spilled(&session);
    doing(&mut session, &[Action::Wait { minutes: 5.0 }]);
    assert!((spilled(&session) - shut).abs() < 0.5, "{shut} L, then {} L", spilled(&session));
    let mut dry = solo(home());
    let outcome =
        doing(&mut dry, &[Action::TellHousehold, Action::ColdValve { opening: 0.0 }, Action::PartPipes]);
    let cup = |harm: &person::Harm| harm.severity() == person::Severity::NearMiss;
    assert!(outcome.harms.iter().all(cup), "{outcome:?}");
}

/// Alone it is twice what one is to lift.
#[test]
fn carried_alone_it_strains_a_back() {
    let mut session = solo(home());
    leads_off(&mut session);
    drained_to_empty(&mut session);
    let outcome = doing(&mut session, &[Action::PartPipes, Action::CarryOut { helped: false }]);
    let strained = |harm: &person::Harm| matches!(harm, person::Harm::Strain { mass } if mass.get() > 46.0);
    assert!(outcome.harms.iter().any(strained) && session.ended.is_none(), "{outcome:?}");
}

/// Its port left open, the tank runs over when it is filled; a new valve gets a pipe of its own, an old one is told.
#[test]
fn a_relief_port_is_closed_by_a_valve_new_or_old() {
    let mut piped = emptied_place();
    piped.home.installation.discharge = plant::Discharge::Capped;
    doing(&mut piped, &[set(4500.0, 40.0), Action::JoinPipes { dielectric: true }]);
    let valve = NewPart::ReliefValve { opens_at: Pressure::psi(150.0) };
    let mut new = piped.clone();
    let outcome = doing(&mut new, &[Action::Replace { part: valve }]);
    assert!(has(&outcome, |f| matches!(f, Fact::Changed { matches: true, needed: true, .. })));
    assert_eq!(new.home.installation.discharge, plant::Discharge::Metal);
    let mut old = piped.clone();
    let outcome = doing(&mut old, &[Action::ReuseRelief]);
    assert!(has(&outcome, |f| matches!(f, Fact::PutInAmiss { .. })));
    assert_eq!(old.home.installation.discharge, plant::Discharge::Capped);
    let filled = |session: &mut Session| {
        doing(session, &[Action::ColdValve { opening: 1.0 }, Action::Wait { minutes: 40.0 }]);
        session.me.spilled.to_litres()
    };
    assert!(filled(&mut piped) > 20.0, "it runs over");
    assert!(filled(&mut new) < 0.1, "{}", new.me.spilled.to_litres());
}

/// Copper on bare steel stays to be seen, and is charged to whoever joined it.
#[test]
fn bare_copper_on_steel_is_told_and_seen() {
    let mut session = emptied_place();
    doing(&mut session, &[set(4500.0, 40.0)]);
    let outcome = doing(&mut session, &[Action::JoinPipes { dielectric: false }]);
    assert!(has(&outcome, |f| matches!(f, Fact::PutInAmiss { .. })));
    assert!(look(&mut session, plant::Place::HeaterTop).contains(&Sight::Dielectric { there: false }));
}
