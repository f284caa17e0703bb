//! Making dead on every supply and layout of the yard.

use plant::{Place, ServiceKind, Stab};

use super::*;
use crate::MeterFunction::{LowVolts, Volts as VoltsAc};

fn yard(heater: HeaterModel) -> Home {
    Home::sound(Setting { heater, ..cold_home().setting })
}

/// Locks the given circuits and reads the given pairs, each screw to the shell. Returns whether that proved dead.
fn proves(home: Home, circuits: &[Circuit], pairs: &[[Screw; 2]]) -> bool {
    let mut session = solo(home);
    let prove = Action::ProveMeter { on: KnownSource::Receptacle };
    doing(&mut session, &[prove.clone(), Action::TellHousehold]);
    doing(&mut session, &uncover(Level::Upper));
    if session.home.plant.plate.has(Level::Lower) {
        doing(&mut session, &uncover(Level::Lower));
    }
    doing(&mut session, &[meter(VoltsAc, Screw::H1, Screw::Shell)]);
    for circuit in circuits {
        let slot = slot(&session, *circuit);
        doing(&mut session, &[Action::Breaker { slot, on: false }, Action::Lock { slot, on: true }]);
    }
    for pair in pairs {
        doing(&mut session, &[meter(LowVolts, pair[0], pair[1])]);
        pair.iter().for_each(|s| drop(doing(&mut session, &[meter(LowVolts, *s, Screw::Shell)])));
    }
    doing(&mut session, &[prove]);
    session.me.proved_dead.is_some()
}

const MAIN: [Screw; 2] = [Screw::H1, Screw::H3];
const OFF_PEAK: [Screw; 2] = [Screw::H5, Screw::H7];

/// Trade sheet 10.1 (published: all sources): every heater can be made dead, an off-peak one only at both circuits.
#[test]
fn every_heater_can_be_made_dead() {
    for &heater in HeaterModel::ALL {
        let home = yard(heater);
        if home.plant.plate.layout == plant::Layout::OffPeak {
            let both = [Circuit::Heater, Circuit::OffPeak];
            assert!(proves(home.clone(), &both, &[MAIN, OFF_PEAK]), "{heater}");
            assert!(!proves(home.clone(), &both, &[MAIN]), "one circuit read");
            assert!(!proves(home, &both[..1], &[MAIN]), "one circuit locked");
        } else {
            assert!(proves(home, &[Circuit::Heater], &[MAIN]), "{heater}");
        }
    }
}

/// An off-peak heater at this hour: its relay follows.
fn off_peak_at(hours: f64) -> Home {
    let mut home = yard(HeaterModel::OffPeak80);
    home.plant.clock = Seconds::hours(hours);
    home.plant.advance(Seconds(0.0));
    home
}

/// Trade sheet 6.8 (published: control devices are never isolation): what only the utility's relay keeps off reads 0 V
/// and is not proved dead.
#[test]
fn an_open_relay_isolates_nothing() {
    let peak = off_peak_at(15.0);
    assert!(!peak.plant.off_peak.unwrap().closed);
    let (main, both) = ([Circuit::Heater], [Circuit::Heater, Circuit::OffPeak]);
    assert!(!proves(peak.clone(), &main, &[MAIN, OFF_PEAK]), "only the relay is open");
    assert!(proves(peak, &both, &[MAIN, OFF_PEAK]), "and with its breaker locked");
}

/// The hours end while a hand is on what only the relay kept dead.
#[test]
fn the_hours_of_a_relay_can_hurt() {
    let mut session = solo(off_peak_at(19.0));
    doing(&mut session, &uncover(Level::Lower));
    let slot = slot(&session, Circuit::Heater);
    doing(&mut session, &[Action::Breaker { slot, on: false }, Action::Lock { slot, on: true }]);
    assert!(volts(&mut session, LowVolts, Screw::H5, Screw::H7).get() < 0.5);
    // To ten seconds before eight in the evening.
    let left = Seconds::hours(20.0).get() - session.home.plant.clock.get() - 10.0;
    doing(&mut session, &[Action::Wait { minutes: left / 60.0 }]);
    let lifted = session.step(&Action::Lift { end: end(Wire::OffPeakFeedA, 1) });
    let shocked = |o: &Outcome| o.harms.iter().any(|harm| matches!(harm, crate::person::Harm::Shock(_)));
    assert!(lifted.noticed.contains(&crate::Noticed::BoxClacks { closed: true }), "{lifted:?}");
    assert!(shocked(&lifted), "{lifted:?}");
    assert!(has(&lifted, |f| matches!(f, Fact::WorkedUnproved { live: true, .. })), "{lifted:?}");
}

/// The relay is sealed; its flag and the hours on its tag are seen at the load center, its front on.
#[test]
fn a_sealed_relay_shows_its_flag_and_its_hours() {
    for (at, closed) in [(13.0, true), (15.0, false), (21.0, true)] {
        let mut session = solo(off_peak_at(at));
        let Shown::Sights { sights, .. } = session.step(&Action::Look { at: Place::LoadCenter }).shown else {
            panic!()
        };
        assert!(sights.contains(&Sight::OffPeakRelay { closed }), "{at}: {sights:?}");
        let hours = sights.iter().find_map(|sight| match sight {
            Sight::BoxHours { off_from, off_for, .. } => {
                Some((off_from.get() / 3600.0, off_for.get() / 3600.0))
            }
            _ => None,
        });
        assert_eq!(hours, Some((14.0, 6.0)));
        assert_eq!(session.step(&Action::SetClock).shown, Shown::Refused { why: Refusal::NotHere });
    }
}

/// Trade sheet 1.8 (from memory): the high leg stands at 208 V to ground, and proves a ground as well as another.
#[test]
fn a_high_leg_proves_a_ground() {
    let mut home = yard(HeaterModel::Plain40);
    home.plant.service = plant::Service::sound(ServiceKind::Delta240High);
    let mut session = solo(home.clone());
    doing(&mut session, &uncover(Level::Upper));
    let outcome = doing(&mut session, &[meter(VoltsAc, Screw::H3, Screw::Shell)]);
    assert!(has(&outcome, |f| matches!(f, Fact::GroundProved { on: Screw::Shell })), "{outcome:?}");
    assert!(proves(home, &[Circuit::Heater], &[MAIN]));
}

/// What a single-element heater has not, nobody can open, reach or change.
#[test]
fn a_lower_compartment_that_is_not_there_is_refused() {
    let mut session = solo(yard(HeaterModel::Small20));
    for act in [
        Action::Cover { which: Cover::Lower, off: true },
        Action::Dial { level: Level::Lower, to: Temperature::fahrenheit(110.0) },
        meter(VoltsAc, Screw::LEa, Screw::LEb),
        Action::Replace { part: NewPart::Thermostat { level: Level::Lower } },
        Action::Look { at: Place::LowerCompartment },
    ] {
        let shown = session.step(&act).shown;
        assert_eq!(shown, Shown::Refused { why: Refusal::NotHere }, "{act:?}");
    }
}

/// A receptacle of 120 V is where a leg and the neutral have 120 V: not on a high leg, not in a 480Y/277 building.
#[test]
fn a_portable_heater_wants_a_receptacle() {
    let plug = |leg, on| Action::PortableHeater { leg, on };
    for &kind in ServiceKind::ALL {
        let mut home = yard(HeaterModel::Plain40);
        home.plant.service = plant::Service::sound(kind);
        for &leg in Stab::ALL {
            let there = match kind {
                ServiceKind::Wye277 => false,
                ServiceKind::Delta240High => leg == Stab::One,
                _ => true,
            };
            let mut session = solo(home.clone());
            let shown = session.step(&plug(leg, true)).shown;
            if there {
                let sights = vec![Sight::Portable { leg, glow: Glow::Full }];
                assert_eq!(shown, Shown::DoneWith { sights }, "{kind} {leg}");
                let again = session.step(&plug(leg, true)).shown;
                assert_eq!(again, Shown::Refused { why: Refusal::AlreadySo });
                assert_eq!(session.step(&plug(leg, false)).shown, Shown::Done);
            } else {
                assert_eq!(shown, Shown::Refused { why: Refusal::NotHere }, "{kind} {leg}");
            }
        }
    }
}

/// On a leg that the utility has lost and nothing feeds back it stays dark; at the end it goes home with the tools.
#[test]
fn a_portable_heater_shows_a_dead_leg_and_goes_home() {
    let mut home = yard(HeaterModel::Plain40);
    home.plant.service.impedance[0] = plant::BURNT_OFF;
    home.plant.service.loads = plant::supply::Loads::NONE;
    let slot = home.plant.panel.slot_of(Circuit::Heater).unwrap();
    home.plant.panel.breakers[slot].handle = plant::Handle::Off;
    let mut session = solo(home);
    let shown = session.step(&Action::PortableHeater { leg: Stab::One, on: true }).shown;
    let sights = vec![Sight::Portable { leg: Stab::One, glow: Glow::Dark }];
    assert_eq!(shown, Shown::DoneWith { sights });
    session.step(&Action::HandOver);
    assert_eq!(session.home.plant.service.portable, [false; 2]);
}

/// Trade sheet 3.1 (published: a control bulletin): a residential dial goes from 90 to 150 °F, both ends with it.
#[test]
fn a_dial_goes_from_90_to_150() {
    let mut session = solo(yard(HeaterModel::Plain40));
    let mut open = |which| session.step(&Action::Cover { which, off: true });
    for which in [Cover::Upper, Cover::UpperInsulation] {
        let _ = open(which);
    }
    let mut turned = |fahrenheit| {
        let to = Temperature::fahrenheit(fahrenheit);
        let shown = session.step(&Action::Dial { level: Level::Upper, to }).shown;
        (shown, session.home.plant.thermostats[0].dial.to_fahrenheit())
    };
    let beyond = Shown::Refused { why: Refusal::OutOfRange };
    assert_eq!(turned(88.0), (beyond.clone(), turned(88.0).1));
    for end in [90.0, 150.0] {
        let (shown, dial) = turned(end);
        assert!(shown == Shown::Done && (dial - end).abs() < 1e-9, "{end}: {shown:?}, {dial}");
    }
    assert_eq!(turned(152.0).0, beyond);
}
