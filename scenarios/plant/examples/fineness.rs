//! Lives three days of draws with a fault in ordinary steps and in finer ones, and prints how far apart they come out:
//! outlet in ten-second windows of every draw, heat put in, switchings, steps' time.
//!
//! usage: fineness [FACTOR] [FAULT...]; FACTOR of the steps, 0.1 unless given; five heaters, all of them with FAULTs

#![allow(clippy::disallowed_methods, reason = "the clock is what is printed")]

use plant::climate::Climate;
use plant::home::{Home, Setting};
use plant::household::HouseholdKind;
use plant::thermal::Fineness;
use plant::{FaultId, Happening, HeaterModel, Plant, Tap};
use quantity::{Draw, Seconds, Volume};

/// Hour and gallons.
const DAY: [(f64, f64); 9] = [
    (6.5, 15.0),
    (7.0, 2.0),
    (7.5, 9.0),
    (12.0, 1.0),
    (16.5, 9.0),
    (17.0, 5.0),
    (18.0, 1.0),
    (20.0, 2.0),
    (21.0, 7.0),
];

struct Lived {
    outlet: Vec<f64>,
    switches: usize,
    kilowatt_hours: f64,
    milliseconds: f64,
}

fn live(mut plant: Plant, fineness: Fineness) -> Lived {
    let mut lived = Lived { outlet: Vec::new(), switches: 0, kilowatt_hours: 0.0, milliseconds: 0.0 };
    let begun = std::time::Instant::now();
    let start = plant.clock.get();
    let pass = |plant: &mut Plant, time: f64| {
        let news = plant.advance_with(Seconds(time), fineness);
        news.iter().filter(|(_, what)| matches!(what, Happening::Switched { .. })).count()
    };
    for day in 0..3 {
        for (hour, gallons) in DAY {
            let at = start + f64::from(day) * 86_400.0 + hour * 3600.0;
            let wait = at - plant.clock.get();
            lived.switches += pass(&mut plant, wait);
            plant.plumbing.taps[Tap::Shower.index()] = 0.8;
            let flow = plant.tap_flow(Tap::Shower).get();
            let windows = (Volume::gallons(gallons).get() / flow.max(1e-5) / 10.0).ceil().min(200.0);
            for _ in 0..windows as u32 {
                let before = plant.plumbing.ledger.taps[Tap::Shower.index()];
                lived.switches += pass(&mut plant, 10.0);
                let after = plant.plumbing.ledger.taps[Tap::Shower.index()];
                let mass = after.mass.get() - before.mass.get();
                let heat = after.heat.get() - before.heat.get();
                lived.outlet.push(solver::water::temperature(heat / mass.max(1e-9)));
            }
            plant.plumbing.taps[Tap::Shower.index()] = 0.0;
        }
    }
    lived.kilowatt_hours = plant.plumbing.ledger.electric.get() / 3.6e6;
    lived.milliseconds = begun.elapsed().as_secs_f64() * 1e3;
    lived
}

fn main() {
    let mut named: Vec<String> = std::env::args().skip(1).collect();
    let steps = named.first().and_then(|a| a.parse().ok()).unwrap_or(0.1);
    named.retain(|a| a.parse::<f64>().is_err());
    // Faults that are named are lived with on every heater.
    let heaters = if named.is_empty() { 5 } else { HeaterModel::ALL.len() };
    let faults = FaultId::ALL.iter().map(|id| Some(*id)).chain([None]);
    for id in faults {
        let name = id.map_or_else(|| "sound".to_owned(), |id| id.to_string());
        if !named.is_empty() && !named.contains(&name) {
            continue;
        }
        for (i, &heater) in HeaterModel::ALL.iter().enumerate().take(heaters) {
            let mut home = Home::sound(Setting {
                heater,
                household: HouseholdKind::Couple,
                climate: Climate::NorthRidge,
                day: 40,
                in_line: None,
                location: Default::default(),
            });
            if let Some(id) = id {
                let fault = id.fault();
                if !(fault.fits)(&home) {
                    continue;
                }
                let drawn = fault.complete(&Default::default(), &mut Draw::new(i as u64, "fault"));
                (fault.apply)(&drawn.unwrap_or_default(), &mut home);
            }
            let a = live(home.plant.clone(), Fineness::ORDINARY);
            let b = live(home.plant, Fineness { steps, ..Fineness::ORDINARY });
            let off: Vec<f64> = a.outlet.iter().zip(&b.outlet).map(|(a, b)| (a - b).abs()).collect();
            let rms = (off.iter().map(|x| x * x).sum::<f64>() / off.len().max(1) as f64).sqrt();
            let most = off.iter().fold(0.0, |m: f64, x| m.max(*x));
            println!(
                "{name:5} {:12} outlet {rms:.3} K RMS, {most:.2} at worst; heat {:.3} / {:.3} kWh, {:+.2} %; switchings {} / {}; {:.0} / {:.0} ms",
                heater.name(),
                a.kilowatt_hours,
                b.kilowatt_hours,
                100.0 * (a.kilowatt_hours / b.kilowatt_hours.max(1e-9) - 1.0),
                a.switches,
                b.switches,
                a.milliseconds,
                b.milliseconds
            );
        }
    }
}
