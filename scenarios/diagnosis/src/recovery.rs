//! The round of recovery: the tank run cold, made warm again at low dials, each dial turned up alone. It shows who calls
//! when, how far a blade lags its dial, what trips only under long heating, and what comes and goes meanwhile.

use bench::{Action, Clamped, Cover};
use plant::home::Home;
use plant::{Circuit, Place, Screw, Tap};
use quantity::Temperature;

use crate::rounds::{DRAW, LEVELS, arrive, volts};

/// The dials while a tank run cold is made warm again: all of it stands at one warmth then.
const DIALS_LOW: Temperature = Temperature::fahrenheit(110.0);
/// Above that by more than a sound blade's differential (a common test procedure's bound is 30 °F, field practice 8 to
/// 20 °F, from memory), and by less than a grown one's: a sound thermostat closes.
const DIALS_UP: Temperature = Temperature::fahrenheit(137.0);
/// A tank is cold when so many times its storage has been drawn.
const COLD: f64 = 1.1;
/// The pause in which something that comes and goes may come.
const PAUSE: f64 = 60.0;

/// What calls, what runs and what the legs have, in a few readings.
fn glance() -> Vec<Action> {
    let across = [
        (Screw::M1, Screw::N),
        (Screw::M2, Screw::N),
        (Screw::H1, Screw::H3),
        (Screw::H2, Screw::H4),
        (Screw::UEa, Screw::UEb),
        (Screw::LEa, Screw::LEb),
    ];
    let mut acts: Vec<Action> = across.iter().map(|(a, b)| volts(*a, *b)).collect();
    acts.push(Action::Clamp { around: Clamped::BothLegs });
    acts
}

pub(crate) fn acts(home: &Home) -> Vec<Action> {
    let mut acts = arrive();
    // The pipes are cold: what is held tight ticks now or never.
    acts.extend([
        Action::Tap { tap: Tap::Kitchen, opening: 1.0 },
        Action::Listen { at: Place::HeaterTop },
        Action::Tap { tap: Tap::Kitchen, opening: 0.0 },
    ]);
    // Off and on once: what tripped with nothing behind it stays on.
    for slot in [Circuit::Heater, Circuit::OffPeak].iter().filter_map(|one| home.plant.panel.slot_of(*one)) {
        let slot = u32::try_from(slot).unwrap_or(u32::MAX);
        acts.extend([false, true].map(|on| Action::Breaker { slot, on }));
    }
    acts.push(Action::Cover { which: Cover::PanelFront, off: true });
    let dials = |to| LEVELS.map(|level| Action::Dial { level, to });
    acts.extend(dials(DIALS_LOW));
    let draws = home.plant.plate.nominal * COLD / DRAW;
    for _ in 0..draws.ceil() as usize {
        acts.push(Action::Bucket { tap: Tap::Bath, volume: DRAW });
        acts.push(Action::Listen { at: Place::HeaterTop });
        acts.extend(glance());
    }
    acts.push(Action::WaitForCutOut);
    acts.push(Action::Listen { at: Place::HeaterTop });
    acts.extend([Action::Look { at: Place::LoadCenter }, Action::Look { at: Place::UpperCompartment }]);
    acts.extend(glance());
    for level in LEVELS {
        acts.push(Action::Dial { level, to: DIALS_UP });
        acts.extend(glance());
        acts.push(Action::Dial { level, to: DIALS_LOW });
    }
    acts.extend(dials(DIALS_UP));
    acts.extend([Action::Wait { minutes: PAUSE }, Action::WaitForCutOut]);
    acts.extend(glance());
    acts.push(Action::Look { at: Place::LoadCenter });
    acts.push(Action::Bucket { tap: Tap::Bath, volume: DRAW });
    acts.push(Action::Listen { at: Place::HeaterTop });
    acts
}
