//! The plant in time: balances, sequences, reheat, pressure, draining, dry fire.

use quantity::{Seconds, Temperature, Volume};
use solver::water;

use super::Fineness;
use super::vessel::vessel;
use crate::climate::Climate;
use crate::home::Setting;
use crate::household::HouseholdKind;
use crate::waterworks::{DipTube, ExpansionTank, Tap};
use crate::{Happening, HeaterModel, Level, Plant};

mod balance;
mod heating;
mod piping;
mod pressure;
mod water_level;

/// A sound plant on a spring day.
fn sound(heater: HeaterModel) -> Plant {
    let household = HouseholdKind::Couple;
    Plant::sound(Setting {
        heater,
        household,
        climate: Climate::MillValley,
        day: 100,
        in_line: None,
        location: Default::default(),
    })
}

/// The same, full of cold water, controls settled at it.
fn cold(heater: HeaterModel, inlet: Temperature) -> Plant {
    let mut plant = sound(heater);
    plant.plumbing.inlet = inlet;
    plant.tank = vessel(&plant.plate).full_at(inlet.to_celsius());
    plant.settle_controls();
    plant.settle_cold_side();
    plant
}

fn open(plant: &mut Plant, tap: Tap, opening: f64) {
    plant.plumbing.taps[tap.index()] = opening;
}

/// Draws a volume at one tap, counting what comes.
fn draw(plant: &mut Plant, tap: Tap, volume: Volume) -> Vec<(Seconds, Happening)> {
    open(plant, tap, 1.0);
    let flow = plant.tap_flow(tap);
    assert!(flow.get() > 0.0, "nothing comes from {tap}");
    let happened = plant.advance(Seconds(volume.get() / flow.get()));
    open(plant, tap, 0.0);
    happened
}

/// Water in the tank and on the cold side, kg.
fn held(plant: &Plant) -> f64 {
    plant.tank.mass() + plant.plumbing.cold_side.mass.get()
}

/// Its heat above liquid at 0 °C, J.
fn stored(plant: &Plant) -> f64 {
    plant.tank.energy() + plant.plumbing.cold_side.heat.get()
}

/// A day of ordinary draws (trade sheet 4.6, medium, 55 gallons; from memory).
const DAY: [(f64, f64); 12] = [
    (0.0, 15.0),
    (0.5, 2.0),
    (1.667, 9.0),
    (10.5, 9.0),
    (11.5, 5.0),
    (12.0, 1.0),
    (12.75, 1.0),
    (12.833, 1.0),
    (16.0, 1.0),
    (16.25, 2.0),
    (16.75, 2.0),
    (17.0, 7.0),
];

/// Runs that day; hands every happening with its moment in the day.
fn day(plant: &mut Plant, fineness: Fineness) -> Vec<(f64, Happening)> {
    let mut all = Vec::new();
    let mut at = 0.0;
    let mut run = |plant: &mut Plant, time: f64| {
        let start = at;
        all.extend(
            plant.advance_with(Seconds(time), fineness).into_iter().map(|(t, h)| (start + t.get(), h)),
        );
        at += time;
        at
    };
    let mut now = 0.0;
    for (hour, gallons) in DAY {
        now = run(plant, hour * 3600.0 - now);
        open(plant, Tap::Shower, 0.8);
        let flow = plant.tap_flow(Tap::Shower);
        now = run(plant, Volume::gallons(gallons).get() / flow.get() + 0.0 * now);
        open(plant, Tap::Shower, 0.0);
    }
    run(plant, 86_400.0 - now);
    all
}
