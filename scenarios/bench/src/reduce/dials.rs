//! Dials, the limit's button, and the seat of a thermostat.

use plant::{Level, Point, Screw};
use quantity::{Constant, Seconds, Tag, Temperature};

use super::turn::Turn;
use super::{Answered, hands, reach};
use crate::shown::{Refusal, Shown, Sight};

quantity::constants! {
    /// What a dial can be set to.
    const SPAN: Constant<(Temperature, Temperature)> = Constant::of("what a dial can be set to", (Temperature::fahrenheit(89.9), Temperature::fahrenheit(150.1)), Tag::Published("a control maker's bulletin: typically 90 to 150 °F; a tenth of a degree more on each side"));
}

/// Turns a dial. The shield leaves it free.
pub(super) fn dial(turn: &mut Turn, level: Level, to: Temperature, time: Seconds) -> Answered {
    if !(SPAN.get().0..=SPAN.get().1).contains(&to) {
        return Err(Refusal::OutOfRange);
    }
    reach::setting(&turn.s, level)?;
    if let Some(thermostat) = turn.s.home.plant.thermostats.get_mut(level.index()) {
        thermostat.dial = to;
    }
    turn.pass(time);
    Ok(Shown::Done)
}

/// Presses the button. It latches only when the limit is tripped and has cooled.
pub(super) fn press_reset(turn: &mut Turn, time: Seconds) -> Answered {
    reach::control(&turn.s, Level::Upper)?;
    let mut clicks = turn.s.home.plant.limit.press();
    // An off-peak heater has a second button below.
    if reach::control(&turn.s, Level::Lower).is_ok() {
        clicks |= turn.s.home.plant.lower_limit.as_mut().is_some_and(plant::Limit::press);
    }
    turn.pass(time);
    let mut sights = vec![if clicks { Sight::Clicked } else { Sight::NoClick }];
    let plant = &turn.s.home.plant;
    // One click of two buttons does not say whose it was; the eye does.
    if let Some(below) = plant.lower_limit.filter(|_| reach::control(&turn.s, Level::Lower).is_ok()) {
        sights.push(Sight::Button { proud: plant.limit.tripped });
        sights.push(Sight::LowerButton { proud: below.tripped });
    }
    Ok(Shown::DoneWith { sights })
}

/// A sensor's plug, beside the board: low voltage, but between live screws.
pub(super) fn plug(turn: &mut Turn, level: Level, fitted: bool, time: Seconds) -> Answered {
    let Some(board) = turn.s.home.plant.board else { return Err(Refusal::NotHere) };
    reach::point(&turn.s, Point::Screw(Screw::K1))?;
    if board.sensors.get(level.index()).is_none_or(|sensor| sensor.plugged == fitted) {
        return Err(Refusal::AlreadySo);
    }
    hands::touch(turn, Point::Screw(Screw::K1), hands::Grip::Touches);
    turn.pass(time);
    if let Some(sensor) = turn.s.home.plant.board.as_mut().and_then(|b| b.sensors.get_mut(level.index())) {
        sensor.plugged = fitted;
    }
    Ok(Shown::Done)
}

/// Presses a thermostat flat under its clip: fingers between the screws.
pub(super) fn seat(turn: &mut Turn, level: Level, time: Seconds) -> Answered {
    let screw = match level {
        Level::Upper => Screw::U1,
        Level::Lower => Screw::D1,
    };
    reach::point(&turn.s, Point::Screw(screw))?;
    hands::touch(turn, Point::Screw(screw), hands::Grip::Touches);
    turn.pass(time);
    let plant = &mut turn.s.home.plant;
    let limit = match level {
        Level::Upper => Some(&mut plant.limit),
        Level::Lower => plant.lower_limit.as_mut(),
    };
    // The bracket holds both: what sprang off is pressed back with it.
    let limit_was_loose = limit.is_some_and(|limit| {
        let loose = !limit.seated || limit.grip < 1.0;
        (limit.seated, limit.grip) = (true, 1.0);
        loose
    });
    if let Some(thermostat) = turn.s.home.plant.thermostats.get_mut(level.index()) {
        if thermostat.seated && thermostat.grip >= 1.0 && !limit_was_loose {
            return Ok(Shown::DoneWith { sights: vec![Sight::Ordinary] });
        }
        thermostat.seated = true;
        thermostat.grip = 1.0;
    }
    Ok(Shown::Done)
}
