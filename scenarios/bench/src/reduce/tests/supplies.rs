//! Making dead on every supply and layout of the yard.

use plant::{Place, ServiceKind};

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
