//! What switches, trips and burns by itself: thermostats, limit, breakers, elements in air, hot joints.
//!
//! Each part advances exactly for constant currents and evenly changing wall temperatures. Whoever moves
//! time asks [`horizon`] how far that may go at once, then calls [`step`], then solves the network again if
//! its fingerprint changed.

pub mod breaker;
pub mod element;
pub mod joint;
pub mod limit;
pub mod thermostat;

use quantity::{Seconds, Temperature};

use crate::electrical::Live;
use crate::{Happening, Level, Plant};

/// What the controls feel of the water while a step lasts.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct Around {
    /// Tank wall beside the upper and the lower control, when the step begins.
    pub wall: [Temperature; 2],
    /// How fast each wall temperature changes, kelvin a second.
    pub rate: [f64; 2],
    /// Whether each element stands in water.
    pub wetted: [bool; 2],
}

impl Around {
    /// Walls that keep their temperature.
    pub fn steady(wall: [Temperature; 2], wetted: [bool; 2]) -> Self {
        Self { wall, rate: [0.0; 2], wetted }
    }
}

/// Shortest step that [`horizon`] asks for: a thermostat that creeps up to its point is not worth less.
pub const SHORTEST_STEP: Seconds = Seconds(0.5);

const LEVELS: [Level; 2] = [Level::Upper, Level::Lower];

/// Lets time pass for everything that switches or burns, with the currents of `live`. What happened comes
/// back with its moment counted from the start of the step, in order.
pub fn step(plant: &mut Plant, time: Seconds, live: &Live, around: &Around) -> Vec<(Seconds, Happening)> {
    let mut happened = Vec::new();
    let room = plant.room;
    for level in LEVELS {
        let i = level.index();
        let (wall, rate) = (around.wall[i], around.rate[i]);
        let cover = plant.insulated[i];
        let thermostat = &mut plant.thermostats[i];
        if let Some(at) = thermostat.advance(time, wall, rate, cover, room) {
            happened.push((at, Happening::Switched { level, calling: thermostat.blade_calls() }));
        }
        let watts = live.element_watts(level);
        if let Some((at, after)) = plant.elements[i].advance(time, watts, around.wetted[i], wall, room) {
            happened.push((at, Happening::ElementBurntOut { level, after }));
        }
    }
    if let Some(at) = plant.limit.advance(time, around.wall[0], around.rate[0], plant.insulated[0], room) {
        happened.push((at, Happening::LimitTripped { water: around.wall[0] }));
    }
    for (slot, breaker) in plant.panel.breakers.iter_mut().enumerate() {
        let amps = [0, 1].map(|pole| live.pole_amps(slot, pole));
        if let Some(at) = breaker.advance(time, amps) {
            happened.push((at, Happening::BreakerTripped { slot: slot as u32 }));
        }
    }
    for (end, at) in joint::advance(&mut plant.wiring, time, live) {
        happened.push((at, Happening::JointBurnt { end }));
    }
    happened.sort_by(|(a, _), (b, _)| a.get().total_cmp(&b.get()));
    happened
}

/// The longest step before something could switch or burn, currents staying as they are: never too long,
/// sometimes shorter than need be, infinite where nothing can.
pub fn horizon(plant: &Plant, live: &Live, around: &Around) -> Seconds {
    let mut soonest = f64::INFINITY;
    let mut consider = |time: Seconds| soonest = soonest.min(time.get());
    for level in LEVELS {
        let i = level.index();
        let (wall, rate) = (around.wall[i], around.rate[i]);
        consider(plant.thermostats[i].earliest(wall, rate, plant.insulated[i], plant.room));
        if !around.wetted[i] {
            consider(plant.elements[i].earliest(live.element_watts(level)));
        }
    }
    consider(plant.limit.earliest(around.wall[0], around.rate[0], plant.insulated[0], plant.room));
    for (slot, breaker) in plant.panel.breakers.iter().enumerate() {
        for pole in [0, 1] {
            consider(breaker.time_to_trip(pole, live.pole_amps(slot, pole)));
        }
    }
    consider(joint::earliest(&plant.wiring, live));
    Seconds(soonest.max(SHORTEST_STEP.get()))
}
