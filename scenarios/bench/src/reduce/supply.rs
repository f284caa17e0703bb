//! The load center's face: handles, locks, directory; and trying the start.

use plant::{Circuit, Handle, Level, Place, Point, Screw, Stab};
use quantity::{Constant, Seconds, Tag, Temperature};

use super::turn::Turn;
use super::{Answered, hands, prove, reach};
use crate::shown::{Fact, Refusal, Shown, Sight};

quantity::constants! {
    /// A dial turned as far as it goes.
    const DIAL_TOP: Constant<Temperature> = Constant::of("a dial turned as far as it goes", Temperature::fahrenheit(150.0), Tag::Published("a control maker's bulletin: up to 150 °F on most"));
    /// From this power up an element can be heard.
    const HEARD: Constant = Constant::new("power from which an element starts audibly", 100.0, "W", Tag::Model("judged by ear at a heater switched on"));
}

/// Moves a handle.
pub(super) fn breaker(turn: &mut Turn, slot: u32, on: bool, time: Seconds) -> Answered {
    let clock = turn.s.clock;
    let breaker = turn.s.home.plant.panel.breakers.get_mut(slot as usize).ok_or(Refusal::NotHere)?;
    match (breaker.stands(), on) {
        (Handle::On, true) | (Handle::Off, false) => return Err(Refusal::AlreadySo),
        (Handle::Off, true) if breaker.locked => return Err(Refusal::Locked),
        (Handle::Off, true) => turn.switch_on(slot),
        (Handle::On | Handle::Tripped, false) => {
            breaker.throw(Handle::Off);
            turn.s.me.off_since.insert(slot, clock);
        }
        (Handle::Tripped, true) => {} // from the middle it has to go to off first
    }
    turn.pass(time);
    let sights = handle(turn, slot).into_iter().collect();
    Ok(Shown::DoneWith { sights })
}

/// A handle as it stands.
fn handle(turn: &Turn, slot: u32) -> Option<Sight> {
    let breaker = turn.s.home.plant.panel.breakers.get(slot as usize)?;
    Some(Sight::BreakerHandle { slot, handle: breaker.stands(), locked: breaker.locked })
}

/// Turns up each dial in reach and listens.
pub(super) fn try_start(turn: &mut Turn, time: Seconds) -> Answered {
    let upper = reach::setting(&turn.s, Level::Upper);
    let lower = reach::setting(&turn.s, Level::Lower);
    if lower.is_err() {
        upper.clone()?;
    }
    let was = turn.s.home.plant.thermostats.map(|t| t.dial);
    let reached = [upper.is_ok(), lower.is_ok()];
    for (thermostat, reached) in turn.s.home.plant.thermostats.iter_mut().zip(reached) {
        if reached && thermostat.dial < DIAL_TOP.get() {
            thermostat.dial = DIAL_TOP.get();
        }
    }
    turn.pass(time);
    let live = turn.s.home.plant.standing();
    let started = [Level::Upper, Level::Lower].into_iter().any(|l| live.element_watts(l).get() > HEARD.get());
    for (thermostat, dial) in turn.s.home.plant.thermostats.iter_mut().zip(was) {
        thermostat.dial = dial;
    }
    Ok(Shown::DoneWith { sights: vec![Sight::Starts { started }] })
}

/// Own lock and tag on or off.
pub(super) fn lock(turn: &mut Turn, slot: u32, on: bool, time: Seconds) -> Answered {
    let breaker = turn.s.home.plant.panel.breakers.get(slot as usize).ok_or(Refusal::NotHere)?;
    if on && breaker.handle != Handle::Off {
        return Err(Refusal::NotOff);
    }
    if breaker.locked == on {
        return Err(Refusal::AlreadySo);
    }
    let feeds = breaker.feeds_heater();
    let clock = turn.s.clock;
    if let Some(breaker) = turn.s.home.plant.panel.breakers.get_mut(slot as usize) {
        breaker.locked = on;
        breaker.tagged = on;
    }
    if !on {
        turn.s.me.off_since.insert(slot, clock);
        if feeds {
            prove::forget(&mut turn.s.me);
        }
    }
    turn.pass(time);
    Ok(Shown::DoneWith { sights: handle(turn, slot).into_iter().collect() })
}

/// Moves a two-pole breaker to a space where its poles sit on both legs, wires and all. A tandem has one stab in any space:
/// beside where it was, that is the other leg's.
pub(super) fn shift(turn: &mut Turn, slot: u32, time: Seconds) -> Answered {
    reach::place(&turn.s, Place::LoadCenter)?;
    let breaker = turn.s.home.plant.panel.breakers.get(slot as usize).ok_or(Refusal::NotHere)?;
    if breaker.is_single() {
        return Err(Refusal::NotHere);
    }
    if breaker.stabs[0] != breaker.stabs[1] {
        return Err(Refusal::AlreadySo);
    }
    let screws = match breaker.feeds {
        Circuit::Heater => [Screw::B1, Screw::B2],
        _ => [Screw::S1, Screw::S2],
    };
    for screw in screws {
        hands::touch(turn, Point::Screw(screw), hands::Grip::Grasps);
    }
    let clock = turn.s.clock;
    if let Some(breaker) = turn.s.home.plant.panel.breakers.get_mut(slot as usize) {
        breaker.throw(Handle::Off);
        breaker.stabs = match (breaker.tandem, breaker.stabs[0]) {
            (None, _) => [Some(Stab::One), Some(Stab::Two)],
            (Some(_), Some(Stab::One)) => [Some(Stab::Two); 2],
            (Some(_), _) => [Some(Stab::One); 2],
        };
    }
    turn.s.me.off_since.insert(slot, clock);
    turn.pass(time);
    if turn.s.me.findings.is_empty() {
        turn.facts.push(Fact::RepairedWithoutFinding);
    }
    Ok(Shown::DoneWith { sights: handle(turn, slot).into_iter().collect() })
}

/// Writes the directory.
pub(super) fn relabel(turn: &mut Turn, slot: u32, feeds: Circuit, time: Seconds) -> Answered {
    let breaker = turn.s.home.plant.panel.breakers.get_mut(slot as usize).ok_or(Refusal::NotHere)?;
    if breaker.label == feeds {
        return Err(Refusal::AlreadySo);
    }
    breaker.label = feeds;
    turn.pass(time);
    Ok(Shown::Done)
}
