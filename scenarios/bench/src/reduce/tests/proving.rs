//! Making dead and proving it, with the traps that lie in the way.

use super::*;
use crate::MeterFunction::{LowVolts, Ohms, Volts as VoltsAc};

fn is_proof(outcome: &Outcome) -> bool {
    has(outcome, |f| matches!(f, Fact::ProvedDead))
}

/// Trade sheet 10.1: the whole procedure, nothing left out.
#[test]
fn the_whole_procedure_proves_dead() {
    let mut session = solo(cold_home());
    let outcome = make_dead(&mut session, &[Screw::UEa, Screw::UEb]);
    assert!(is_proof(&outcome), "{outcome:?}");
    let lift = |wire, side| Action::Lift { end: end(wire, side) };
    let good = session.step(&lift(Wire::UpperSwitched, 1));
    assert!(!has(&good, |f| matches!(f, Fact::WorkedUnproved { .. })), "{good:?}");
    // A screw nobody read is not proved, though it is dead.
    let bad = session.step(&lift(Wire::LowerSwitched, 1));
    assert!(has(&bad, |f| matches!(f, Fact::WorkedUnproved { live: false, .. })), "{bad:?}");
    assert_eq!(bad.harms, []);
}

/// Each step left out in turn: no proof.
#[test]
fn any_step_left_out_proves_nothing() {
    let prove = Action::ProveMeter { on: KnownSource::Receptacle };
    let slot = slot(&solo(cold_home()), Circuit::Heater);
    let steps = [
        prove.clone(),
        Action::TellHousehold,
        meter(VoltsAc, Screw::H1, Screw::Shell),
        Action::Breaker { slot, on: false },
        Action::Lock { slot, on: true },
        meter(LowVolts, Screw::H1, Screw::H3),
        meter(LowVolts, Screw::H1, Screw::Shell),
        meter(LowVolts, Screw::H3, Screw::Shell),
        prove,
    ];
    let run = |left_out: Option<usize>| {
        let mut session = solo(cold_home());
        doing(&mut session, &uncover(Level::Upper));
        let kept = steps.iter().enumerate().filter(|(i, _)| Some(*i) != left_out);
        kept.map(|(_, a)| session.step(a)).any(|o| is_proof(&o))
    };
    assert!(run(None));
    for (i, step) in steps.iter().enumerate() {
        assert!(!run(Some(i)), "without {step:?}");
    }
}

/// The first thing missing is named, and what was read against a ground counts once that is proved, whenever that is.
#[test]
fn a_ground_proved_later_makes_its_readings_count() {
    let mut session = solo(cold_home());
    let slot = slot(&session, Circuit::Heater);
    doing(&mut session, &uncover(Level::Upper));
    let prove = Action::ProveMeter { on: KnownSource::Receptacle };
    let lift = Action::Lift { end: end(Wire::UpperSwitched, 1) };
    let lacks = |session: &Session| {
        let facts = reduce(session, &lift).1.facts;
        facts.into_iter().find_map(|fact| match fact {
            Fact::WorkedUnproved { missing, .. } => Some(missing),
            _ => None,
        })
    };
    let dead = |screw| meter(LowVolts, screw, Screw::Shell);
    for (acts, missing) in [
        (vec![], Some(Unproved::Lock)),
        (
            vec![Action::Breaker { slot, on: false }, Action::Lock { slot, on: true }],
            Some(Unproved::Household),
        ),
        (vec![Action::TellHousehold], Some(Unproved::Meter)),
        (vec![prove.clone()], Some(Unproved::Legs)),
        (vec![meter(LowVolts, Screw::H1, Screw::H3)], Some(Unproved::Screw)),
        (vec![dead(Screw::H1), dead(Screw::H3), dead(Screw::UEa)], Some(Unproved::Ground)),
        (vec![prove], Some(Unproved::Ground)),
        (
            vec![
                Action::Cover { which: Cover::PanelFront, off: true },
                Action::ZeroLeads,
                meter(Ohms, Screw::Shell, Screw::G),
            ],
            None,
        ),
    ] {
        for act in &acts {
            session.step(act);
        }
        assert_eq!(lacks(&session), missing, "after {acts:?}");
    }
}

#[test]
fn power_back_on_undoes_the_proof() {
    let mut session = solo(cold_home());
    make_dead(&mut session, &[Screw::UEa]);
    let slot = slot(&session, Circuit::Heater);
    doing(&mut session, &[Action::Lock { slot, on: false }, Action::Breaker { slot, on: true }]);
    assert_eq!(session.me.proved_dead, None);
    let outcome = session.step(&Action::Lift { end: end(Wire::UpperSwitched, 1) });
    assert!(has(&outcome, |f| matches!(f, Fact::WorkedUnproved { live: true, protected: false, .. })));
}

/// Continuity of the shell to the panel's ground bar proves the ground without power.
#[test]
fn a_ground_is_proved_by_continuity() {
    let mut session = solo(home());
    lock_out(&mut session);
    doing(&mut session, &[Action::Cover { which: Cover::PanelFront, off: true }, Action::ZeroLeads]);
    let outcome = session.step(&meter(Ohms, Screw::Shell, Screw::G));
    assert!(has(&outcome, |f| matches!(f, Fact::GroundProved { on: Screw::Shell })), "{outcome:?}");
    assert!(!has(&outcome, |f| matches!(f, Fact::OhmsUnproved { .. })));
    // Not with the ground wire off.
    let mut open = home();
    open.plant.wiring.joint_mut(end(Wire::CableG, 0)).on = None;
    let mut session = solo(open);
    doing(&mut session, &[Action::Cover { which: Cover::PanelFront, off: true }, Action::ZeroLeads]);
    let outcome = session.step(&meter(Ohms, Screw::Shell, Screw::G));
    assert!(!has(&outcome, |f| matches!(f, Fact::GroundProved { .. })), "{outcome:?}");
}

/// 0 V to a ground that is open proves nothing (trade sheet 10.1, statement 31).
#[test]
fn an_open_ground_reads_dead_on_a_live_heater() {
    let mut open = cold_home();
    open.plant.wiring.joint_mut(end(Wire::CableG, 1)).on = None;
    open.plant.wiring.joint_mut(end(Wire::Bond, 0)).on = None;
    let mut session = solo(open);
    doing(&mut session, &[Action::Cover { which: Cover::JunctionBox, off: true }]);
    let reading = volts(&mut session, LowVolts, Screw::Ja, Screw::Jg);
    assert!(reading < Volts(1.0), "{reading:?}");
    assert!(session.me.grounds.is_empty());
}

/// Trade sheet 1.6, E1: leg 1 lost, upper calling: 0 V leg to leg, 120 V on each.
#[test]
fn back_feed_shows_to_ground_only() {
    let mut lost = cold_home();
    let breaker = lost.plant.panel.breakers.iter_mut().find(|b| b.feeds == Circuit::Heater).unwrap();
    breaker.poles[0] = plant::Contact::Open;
    let mut session = solo(lost);
    doing(&mut session, &uncover(Level::Upper));
    assert!(volts(&mut session, VoltsAc, Screw::H1, Screw::H3) < Volts(0.5));
    for leg in [Screw::H1, Screw::H3] {
        let reading = volts(&mut session, LowVolts, leg, Screw::Shell);
        assert!(reading.near(Volts(120.0), Volts(1.0)), "{leg}: {reading:?}");
    }
}

#[test]
fn a_broken_lead_reads_nothing_anywhere_and_is_found_by_proving() {
    let mut session = Session::begin(job(cold_home(), Mode::Solo, &[Trap::BrokenLead]));
    doing(&mut session, &uncover(Level::Upper));
    assert_eq!(volts(&mut session, VoltsAc, Screw::H1, Screw::H3), Volts(0.0));
    let prove = Action::ProveMeter { on: KnownSource::Receptacle };
    let shown = session.step(&prove).shown;
    assert_eq!(shown, Shown::Meter { display: Display::Volts { volts: Volts(0.0) } });
    assert_eq!(session.me.meter_proved, None);
    assert_eq!(session.step(&Action::ZeroLeads).shown, Shown::Meter { display: Display::Over });
    doing(&mut session, &[Action::SpareLeads, prove]);
    assert!(session.me.meter_proved.is_some());
    let reading = volts(&mut session, VoltsAc, Screw::H1, Screw::H3);
    assert!(reading.near(Volts(240.0), Volts(3.0)), "{reading:?}");
}

/// Trade sheet 6.13 (computed): ghost volts on 10 megohms, gone on 3 kilohms.
#[test]
fn ghost_volts_vanish_on_low_impedance() {
    let mut haunted = home();
    haunted.plant.beside_live = quantity::Metres(20.0);
    let mut session = solo(haunted);
    lock_out(&mut session);
    doing(&mut session, &uncover(Level::Upper));
    let ghost = volts(&mut session, VoltsAc, Screw::H1, Screw::Shell);
    assert!(ghost > Volts(20.0), "{ghost:?}");
    assert!(volts(&mut session, LowVolts, Screw::H1, Screw::Shell) < Volts(0.5));
}

/// The directory names the wrong breaker: what is locked is dead, the heater is not.
#[test]
fn a_mislabelled_breaker_leaves_the_heater_live() {
    let mut swapped = cold_home();
    for breaker in &mut swapped.plant.panel.breakers {
        breaker.label = match breaker.feeds {
            Circuit::Heater => Circuit::Dryer,
            Circuit::Dryer => Circuit::Heater,
            other => other,
        };
    }
    let labelled = swapped.plant.panel.breakers.iter().position(|b| b.label == Circuit::Heater).unwrap();
    let mut session = solo(swapped);
    let slot = labelled as u32;
    doing(
        &mut session,
        &[
            Action::TellHousehold,
            Action::Breaker { slot, on: false },
            Action::Lock { slot, on: true },
            Action::ProveMeter { on: KnownSource::Receptacle },
        ],
    );
    doing(&mut session, &uncover(Level::Upper));
    assert!(volts(&mut session, LowVolts, Screw::H1, Screw::H3) > Volts(230.0));
    let try_start = session.step(&Action::TryStart);
    assert_eq!(try_start.shown, Shown::DoneWith { sights: vec![Sight::Starts { started: true }] });
}

/// The second source keeps the heater live, and its lock is missed by the proof.
#[test]
fn a_second_source_has_to_be_locked_too() {
    let mut twice = cold_home();
    twice.plant.wiring.second_source = true;
    let mut second = twice.plant.panel.feeding(Circuit::Heater).unwrap().clone();
    second.feeds = Circuit::SecondSource;
    second.label = Circuit::SecondSource;
    twice.plant.panel.breakers.push(second);
    let mut session = solo(twice);
    lock_out(&mut session);
    doing(&mut session, &uncover(Level::Upper));
    assert!(volts(&mut session, LowVolts, Screw::H1, Screw::H3) > Volts(230.0));
    let slot = slot(&session, Circuit::SecondSource);
    doing(&mut session, &[Action::Breaker { slot, on: false }, Action::Lock { slot, on: true }]);
    assert!(volts(&mut session, LowVolts, Screw::H1, Screw::H3) < Volts(0.5));
}

#[test]
fn somebody_switches_an_unlocked_breaker_on() {
    let begin = || Session::begin(job(cold_home(), Mode::Solo, &[Trap::SomebodyResets]));
    let slot = slot(&begin(), Circuit::Heater);
    let mut session = begin();
    doing(&mut session, &[Action::Breaker { slot, on: false }]);
    let outcome = doing(&mut session, &[Action::Wait { minutes: 15.0 }]);
    assert!(outcome.noticed.contains(&Noticed::SomebodyReset { slot }), "{outcome:?}");
    assert!(has(&outcome, |f| matches!(f, Fact::Energised { full: true, covered: true, .. })));
    assert_eq!(session.home.plant.panel.breakers[slot as usize].handle, Handle::On);
    let mut session = begin();
    doing(&mut session, &[Action::Breaker { slot, on: false }, Action::Lock { slot, on: true }]);
    let outcome = doing(&mut session, &[Action::Wait { minutes: 60.0 }]);
    assert_eq!(outcome.noticed, []);
    assert_eq!(session.home.plant.panel.breakers[slot as usize].handle, Handle::Off);
}
