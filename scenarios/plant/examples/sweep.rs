//! Runs every heater with every fault through a week of draws and prints what it came to: time a day,
//! coldest draw, pressures, floods, balances, happenings.

#![allow(clippy::disallowed_methods, reason = "the clock is what is printed")]

use plant::climate::Climate;
use plant::home::{Home, Setting};
use plant::household::HouseholdKind;
use plant::{FaultId, Happening, HeaterModel, Tap};
use quantity::{Draw, Seconds, Volume};
fn main() {
    for &heater in HeaterModel::ALL {
        for &id in FaultId::ALL {
            let mut home = Home::sound(Setting {
                heater,
                household: HouseholdKind::Couple,
                climate: Climate::NorthRidge,
                day: 40,
                in_line: None,
                location: Default::default(),
            });
            let fault = id.fault();
            if !(fault.fits)(&home) {
                continue;
            }
            let Ok(p) = fault.complete(&Default::default(), &mut Draw::new(3, "fault")) else { continue };
            (fault.apply)(&p, &mut home);
            let plant = &mut home.plant;
            let begin = std::time::Instant::now();
            let m0 = plant.tank.mass() + plant.plumbing.cold_side.mass.get();
            let h0 = plant.tank.energy() + plant.plumbing.cold_side.heat.get();
            let mut all: Vec<Happening> = vec![];
            let mut lo = 1e9f64;
            for d in 0..7 {
                for h in [6.5, 7.0, 12.0, 18.0, 19.0, 21.0] {
                    let t = d as f64 * 86400.0 + h * 3600.0;
                    all.extend(plant.advance(Seconds(t - plant.clock.get())).into_iter().map(|x| x.1));
                    plant.plumbing.taps[Tap::Shower.index()] = 1.0;
                    let f = plant.tap_flow(Tap::Shower);
                    if f.get() > 0.0 {
                        all.extend(
                            plant
                                .advance(Seconds(Volume::gallons(10.0).get() / f.get()))
                                .into_iter()
                                .map(|x| x.1),
                        );
                    }
                    lo = lo.min(plant.outlet().to_fahrenheit());
                    plant.plumbing.taps[Tap::Shower.index()] = 0.0;
                }
            }
            let el = begin.elapsed().as_secs_f64() * 1e3 / 7.0;
            let mut counts = std::collections::BTreeMap::new();
            for h in &all {
                let text = format!("{h:?}");
                let name = text.split([' ', '{']).next().unwrap_or_default().to_owned();
                *counts.entry(name).or_insert(0) += 1;
            }
            let l = plant.plumbing.ledger;
            println!(
                "{heater} {id} {el:.1} ms/day lo {lo:.0} out {:.0} F fill {:.3} p {:.0} peak {:.0} floor {:.1} L relief {:.2} kWh {:.1} mass off {:.1e} heat off {:.1e} {counts:?}",
                plant.outlet().to_fahrenheit(),
                plant.fill(),
                plant.plumbing.pressure.to_psi(),
                plant.plumbing.peak.to_psi(),
                plant.plumbing.on_floor.to_litres(),
                l.relief.mass.get(),
                l.electric.get() / 3.6e6,
                plant.tank.mass() + plant.plumbing.cold_side.mass.get() - m0 - l.net_mass().get(),
                plant.tank.energy() + plant.plumbing.cold_side.heat.get() - h0 - l.net_heat().get()
            );
        }
    }
}
