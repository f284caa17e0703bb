//! Whole pieces of work, and what the covers, wires and water are like after them.

use super::*;
use crate::person::Harm;
use crate::view::View;
use plant::Tap;

/// Trade sheet 10.1, 10.6, 10.7, 10.9: an open lower element changed by the book, with nobody hurt, nothing
/// wet, and hot water after it.
#[test]
fn an_element_changed_by_the_book() {
    let mut broken = home();
    broken.plant.elements[1].open = true;
    let mut session = solo(broken);
    assert!({
        make_dead(&mut session, &[Screw::LEa, Screw::LEb]);
        session.me.proved_dead.is_some()
    });
    doing(&mut session, &[Action::Finding { fault: Some(plant::FaultId::F01), evidence: vec![1, 2] }]);
    drained_to_empty(&mut session);
    assert!(!session.me.purged);
    let part = NewPart::asked_by(&session.home.plant.plate, Level::Lower);
    let outcome = doing(&mut session, &[Action::Replace { part }]);
    assert!(has(&outcome, |f| matches!(f, Fact::Changed { matches: true, needed: true, .. })));
    assert!(!has(&outcome, |f| matches!(f, Fact::RepairedWithoutFinding)));
    let refill =
        [Action::Drain { opening: 0.0 }, Action::ColdValve { opening: 0.5 }, Action::Wait { minutes: 30.0 }];
    let outcome = doing(&mut session, &refill);
    assert!(outcome.noticed.contains(&Noticed::RunsSolid { tap: Tap::Bath }), "{outcome:?}");
    assert!(session.me.purged && session.home.plant.fill() > 0.99);
    doing(&mut session, &[Action::Tap { tap: Tap::Bath, opening: 0.0 }]);
    let mut back = uncover(Level::Upper);
    back.extend(uncover(Level::Lower));
    back.reverse();
    for action in back {
        let Action::Cover { which, .. } = action else { continue };
        doing(&mut session, &[Action::Cover { which, off: false }]);
    }
    let slot = slot(&session, Circuit::Heater);
    let outcome =
        doing(&mut session, &[Action::Lock { slot, on: false }, Action::Breaker { slot, on: true }]);
    let proper = |f: &Fact| matches!(f, Fact::Energised { full: true, purged: true, covered: true });
    assert!(has(&outcome, proper), "{outcome:?}");
    doing(&mut session, &[Action::WaitForCutOut]);
    assert!(session.home.plant.is_satisfied());
    assert!((session.home.plant.outlet().to_fahrenheit() - 120.0).abs() < 8.0);
    let all: Vec<Harm> = session.log.iter().flat_map(|e| e.outcome.harms.clone()).collect();
    assert_eq!(all, []);
    let unproved = session.log.iter().flat_map(|e| &e.outcome.facts);
    assert!(!unproved.into_iter().any(|f| matches!(f, Fact::WorkedUnproved { .. })));
}

/// A new gasket on a dirty seat weeps again.
#[test]
fn a_gasket_needs_a_clean_seat() {
    for seat_cleaned in [false, true] {
        let mut leaky = home();
        leaky.plant.elements[1].gasket = plant::Gasket { leak_diameter: 1e-3, seat_dirty: true };
        let mut session = solo(leaky);
        make_dead(&mut session, &[Screw::LEa, Screw::LEb]);
        drained_to_empty(&mut session);
        let part = NewPart::Gasket { level: Level::Lower, seat_cleaned };
        let outcome = doing(&mut session, &[Action::Replace { part }]);
        assert!(has(&outcome, |f| matches!(f, Fact::Changed { needed: true, .. })));
        assert_eq!(session.home.plant.elements[1].gasket.leak_diameter > 0.0, !seat_cleaned);
    }
}

/// Trade sheet, F50 and F03: the fitting that leaks is wet again after wiping; one below it later.
#[test]
fn a_wiped_fitting_tells_where_it_leaks() {
    let mut leaky = home();
    leaky.plant.elements[1].gasket = plant::Gasket { leak_diameter: 0.5e-3, seat_dirty: true };
    let mut session = solo(leaky);
    doing(&mut session, &uncover(Level::Lower));
    let wipe = |fitting| Action::Wipe { fitting };
    doing(&mut session, &[wipe(Fitting::LowerElement), wipe(Fitting::BottomRim)]);
    let look = |session: &mut Session, at| match doing(session, &[Action::Look { at }]).shown {
        Shown::Sights { sights, .. } => sights,
        other => panic!("{other:?}"),
    };
    doing(&mut session, &[Action::Wait { minutes: 3.0 }]);
    let seen = look(&mut session, plant::Place::LowerCompartment);
    assert!(seen.contains(&Sight::Wet { fitting: Fitting::LowerElement, dripping: true }), "{seen:?}");
    let seen = look(&mut session, plant::Place::Drain);
    assert!(seen.contains(&Sight::Dry { fitting: Fitting::BottomRim }), "{seen:?}");
    doing(&mut session, &[Action::Wait { minutes: 10.0 }]);
    let seen = look(&mut session, plant::Place::Drain);
    assert!(seen.contains(&Sight::Wet { fitting: Fitting::BottomRim, dripping: false }), "{seen:?}");
}

#[test]
fn a_burnt_joint_is_cut_back_and_made_again() {
    let mut burnt = home();
    let at = end(Wire::FeedB, 0);
    let joint = burnt.plant.wiring.joint_mut(at);
    joint.charred = true;
    joint.resistance = quantity::Ohms(0.5);
    let mut session = solo(burnt);
    doing(&mut session, &[Action::Cover { which: Cover::JunctionBox, off: true }]);
    lock_out(&mut session);
    let seen = doing(&mut session, &[Action::Look { at: plant::Place::JunctionBox }]).shown;
    assert!(matches!(&seen, Shown::Sights { sights, .. } if sights.contains(&Sight::Charred { end: at })));
    doing(&mut session, &[Action::Remake { end: at, torqued: true }]);
    let joint = session.home.plant.wiring.joint(at);
    assert!(!joint.charred && joint.torqued && joint.resistance == plant::SOUND_JOINT);
    assert_eq!(joint.on, Some(Screw::Jb));
}

#[test]
fn evidence_has_to_exist() {
    let mut session = solo(home());
    let finding = |evidence: Vec<u32>| Action::Finding { fault: None, evidence };
    let shown = session.step(&finding(vec![1])).shown;
    assert_eq!(shown, Shown::Refused { why: Refusal::NoSuchStep { step: 1 } });
    doing(&mut session, &[finding(vec![1])]);
    assert_eq!(session.me.findings.len(), 1);
}

#[test]
fn what_is_in_sight_follows_the_covers() {
    let mut session = solo(home());
    assert_eq!(session.view().dials, [None, None]);
    let places = |view: &View| view.ends.iter().map(|e| e.end.home().place()).collect::<Vec<_>>();
    assert_eq!(places(&session.view()), [plant::Place::HeaterTop]);
    doing(&mut session, &uncover(Level::Lower));
    let view = session.view();
    assert!(view.dials[0].is_none() && view.dials[1].is_some());
    let behind = |p: &plant::Place| matches!(p, plant::Place::LowerCompartment | plant::Place::HeaterTop);
    assert!(places(&view).iter().all(behind) && view.ends.len() > 4);
    doing(&mut session, &[meter(MeterFunction::Volts, Screw::D1, Screw::Shell)]);
    assert!(session.view().meter.is_some());
    assert!(session.inside().layers.iter().flatten().count() == 24);
}
