//! What switches, trips and burns by itself: thermostats, limit, breakers, elements, hot joints and contacts.
//!
//! The bodies of thermostats and limit ride on the tank's wall, so whoever moves the water moves them. Then
//! [`snap`] lets blades jump, [`burn`] heats what heats by its own current, exactly for currents that stay,
//! and [`horizon`] tells how long they may stay. When the network's fingerprint has changed it is time to
//! solve it again.

pub mod board;
pub mod breaker;
pub mod contact;
pub mod element;
pub mod fuse;
pub mod joint;
pub mod limit;
pub mod moisture;
pub mod sheath;
#[cfg(test)]
mod tests;
pub mod thermostat;

use element::{Beside, Failure};
use quantity::{Amps, Constant, Kelvins, Listed, Seconds, Tag, Temperature};

use crate::branch::CONTINUOUS;
use crate::electrical::Live;
use crate::{Circuit, End, Happening, Level, Plant, Screw, Wiring};

quantity::constants! {
    /// Current of an ordinary control.
    const ORDINARY: Constant<Amps> =
        Constant::of("current an ordinary control is made for", Amps(30.0), Tag::CommonPractice);
}

/// The tagged constants of the controls.
pub(crate) const SOURCES: &[&[Listed]] = &[
    CONSTANTS,
    board::CONSTANTS,
    breaker::CONSTANTS,
    contact::CONSTANTS,
    element::CONSTANTS,
    fuse::CONSTANTS,
    joint::CONSTANTS,
    limit::CONSTANTS,
    moisture::CONSTANTS,
    sheath::CONSTANTS,
    thermostat::CONSTANTS,
];

const LEVELS: [Level; 2] = [Level::Upper, Level::Lower];

/// Lets every blade jump whose body stands past its point. `water` tells what lies beside the limit, `beside_lower`
/// what lies beside that of an off-peak circuit; they are asked only once one trips.
pub fn snap(
    plant: &mut Plant,
    water: impl Fn(&Plant) -> Temperature,
    beside_lower: impl Fn(&Plant) -> Temperature,
) -> Vec<Happening> {
    let mut happened = Vec::new();
    let layout = plant.plate.layout;
    let board = plant.govern();
    for (level, thermostat) in LEVELS.into_iter().zip(&mut plant.thermostats) {
        let moves = match board {
            Some(calls) => thermostat.obey(calls[level.index()]),
            None => layout.has(level) && thermostat.snap(),
        };
        if moves {
            if thermostat.blade_calls() {
                contact::wear(&mut thermostat.hot_contact, &thermostat.hot_spot);
            } else {
                contact::wear(&mut thermostat.cold_contact, &thermostat.cold_spot);
            }
            happened.push(Happening::Switched { level, calling: thermostat.blade_calls() });
        }
    }
    if plant.limit.snap() {
        happened.push(Happening::LimitTripped { water: water(plant) });
    }
    if plant.lower_limit.as_mut().is_some_and(|limit| limit.snap()) {
        happened.push(Happening::LimitTripped { water: beside_lower(plant) });
    }
    happened
}

/// How much more heat leaves a sound contact or screw cool than at 30 A: a heater whose plate asks for more has heavier
/// ones, for the continuous load of its branch circuit. Otherwise its own sound parts would warm its limit to a trip.
fn sturdiness(plant: &Plant) -> f64 {
    let times = CONTINUOUS.get() * plant.plate.current().get() / ORDINARY.get().get();
    (times * times).max(1.0)
}

/// Lets time pass in breakers, elements, joints and contacts with the currents of `live`, given the water
/// beside each element and whether it stands in it. What happened comes back in order, each with its moment
/// counted from the start.
pub fn burn(
    plant: &mut Plant,
    time: Seconds,
    live: &Live,
    water: [Temperature; 2],
    wetted: [bool; 2],
) -> Vec<(Seconds, Happening)> {
    let mut happened = Vec::new();
    let boils_at = plant.boils_at();
    let around = water.into_iter().zip(wetted);
    for ((level, element), (water, wetted)) in LEVELS.into_iter().zip(&mut plant.elements).zip(around) {
        let beside = Beside { wetted, water, boils_at, room: plant.room };
        match element.advance(time, live.element_watts(level), beside) {
            Some(Failure::Dry { at, after }) => {
                happened.push((at, Happening::ElementBurntOut { level, after }));
            }
            Some(Failure::Worn { at }) => happened.push((at, Happening::ElementWornOut { level })),
            None => {}
        }
    }
    for (slot, breaker) in plant.panel.breakers.iter_mut().enumerate() {
        breaker.warm(lugs(&plant.wiring, breaker.feeds));
        let amps = [0, 1].map(|pole| live.pole_amps(slot, pole));
        if let Some(at) = breaker.advance(time, amps) {
            happened.push((at, Happening::BreakerTripped { slot: slot as u32 }));
        }
    }
    if let Some(fitted) = &mut plant.in_line {
        happened.extend(fuse::advance(fitted, time, live));
    }
    crate::conductor::advance(&mut plant.wiring, time, live);
    let sturdy = sturdiness(plant);
    for (end, at) in joint::advance(&mut plant.wiring, time, live, sturdy) {
        happened.push((at, Happening::JointBurnt { end }));
    }
    happened.extend(contact::advance(plant, time, live));
    quantity::sort::sort_by_key(&mut happened, |(at, _)| at.get());
    happened
}

/// How warm the joints on a breaker's load screws are.
fn lugs(wiring: &Wiring, feeds: Circuit) -> [Kelvins; 2] {
    let on = match feeds {
        Circuit::Heater => [Screw::B1, Screw::B2],
        Circuit::SecondSource | Circuit::OffPeak => [Screw::S1, Screw::S2],
        Circuit::Range | Circuit::Dryer => return [Kelvins(0.0); 2],
    };
    on.map(|screw| {
        let there = |end: &End| end.side == 0 && end.home() == screw && wiring.exists(end.wire);
        let rises =
            End::all().filter(there).map(|end| wiring.joint(end)).filter(|joint| joint.on == Some(screw));
        Kelvins(rises.fold(0.0, |most, joint| most.max(joint.rise.get())))
    })
}

/// How long the currents of `live` may stand before something could trip or burn: never too long, sometimes
/// shorter than need be, infinite where nothing can. The last of a sequence of such steps grows short; who
/// calls sets the shortest.
pub fn horizon(plant: &Plant, live: &Live, wetted: [bool; 2]) -> Seconds {
    let mut soonest = joint::earliest(&plant.wiring, live);
    soonest = Seconds(soonest.get().min(contact::earliest(plant, live).get()));
    let mut consider = |time: Seconds| soonest = Seconds(soonest.get().min(time.get()));
    for ((level, element), wetted) in LEVELS.into_iter().zip(&plant.elements).zip(wetted) {
        if !wetted {
            consider(element.earliest(live.element_watts(level)));
        }
    }
    for (slot, breaker) in plant.panel.breakers.iter().enumerate() {
        for pole in [0, 1] {
            consider(breaker.time_to_trip(pole, live.pole_amps(slot, pole)));
        }
    }
    if let Some(fitted) = &plant.in_line {
        consider(fuse::earliest(fitted, live));
    }
    soonest
}
