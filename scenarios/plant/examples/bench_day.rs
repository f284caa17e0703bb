//! Times a simulated day of ordinary draws (trade sheet 4.6, medium, 55 gallons).

#![allow(clippy::disallowed_methods)]

use plant::climate::Climate;
use plant::home::Setting;
use plant::household::HouseholdKind;
use plant::{HeaterModel, Plant, Tap};
use quantity::{Seconds, Volume};

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

fn day(plant: &mut Plant) {
    let start = plant.clock.get();
    for (hour, gallons) in DAY {
        plant.advance(Seconds(start + hour * 3600.0 - plant.clock.get()));
        plant.plumbing.taps[Tap::Shower.index()] = 0.8;
        let flow = plant.tap_flow(Tap::Shower);
        plant.advance(Seconds(Volume::gallons(gallons).get() / flow.get()));
        plant.plumbing.taps[Tap::Shower.index()] = 0.0;
    }
    plant.advance(Seconds(start + 86_400.0 - plant.clock.get()));
}

fn main() {
    for &heater in HeaterModel::ALL {
        let household = HouseholdKind::Couple;
        let mut plant = Plant::sound(Setting {
            heater,
            household,
            climate: Climate::MillValley,
            day: 100,
            in_line: None,
            location: Default::default(),
        });
        day(&mut plant);
        let mut best = f64::INFINITY;
        for _ in 0..20 {
            let begin = std::time::Instant::now();
            day(&mut plant);
            best = best.min(begin.elapsed().as_secs_f64());
        }
        println!("{heater}: {:.2} ms a day", best * 1e3);
    }
}
