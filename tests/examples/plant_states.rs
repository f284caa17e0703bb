//! Writes networks of the heater in many states, each as a SPICE netlist with our own solution beside it, for
//! `tests/reference/network/check.py`: faults from the catalogue, wires lifted and crossed, the meter and hands in
//! any place, all supplies.
//!
//! usage: plant_states FOLDER [COUNT]

use std::fs;
use std::path::Path;
use std::process::ExitCode;

use plant::climate::Climate;
use plant::electrical::Bridge;
use plant::fault::{FaultId, Parameters};
use plant::home::{Home, Setting};
use plant::household::HouseholdKind;
use plant::{Circuit, Contact, End, Handle, HeaterModel, Point, Screw};
use quantity::{Draw, Ohms};

/// What is set across points: the meter's two volt ranges, a dry and a wet person (trade sheet 6.12, 7.2).
const BRIDGES: [f64; 4] = [10e6, 3e3, 1600.0, 900.0];

fn main() -> ExitCode {
    let mut args = std::env::args().skip(1);
    let Some(folder) = args.next() else {
        eprintln!("usage: plant_states FOLDER [COUNT]");
        return ExitCode::FAILURE;
    };
    let count = args.next().and_then(|n| n.parse().ok()).unwrap_or(200);
    match write(Path::new(&folder), count) {
        Ok(()) => ExitCode::SUCCESS,
        Err(problem) => {
            eprintln!("{problem}");
            ExitCode::FAILURE
        }
    }
}

fn write(folder: &Path, count: u64) -> Result<(), String> {
    fs::create_dir_all(folder).map_err(|e| e.to_string())?;
    for k in 0..count {
        let mut draw = Draw::new(k, "plant states");
        let home = house(&mut draw);
        let bridges = bridges(&mut draw);
        let written = home.plant.netlist(&bridges, &format!("state {k}")).map_err(|e| e.to_string())?;
        for (ending, text) in [("cir", &written.netlist), ("sol", &written.solution)] {
            fs::write(folder.join(format!("state{k:03}.{ending}")), text).map_err(|e| e.to_string())?;
        }
    }
    println!("{count} states in {}", folder.display());
    Ok(())
}

fn any<T: Copy>(draw: &mut Draw, all: &[T]) -> T {
    all[draw.index(all.len())]
}

fn house(draw: &mut Draw) -> Home {
    let setting = Setting {
        heater: any(draw, HeaterModel::ALL),
        household: any(draw, HouseholdKind::ALL),
        climate: any(draw, Climate::ALL),
        day: 1 + draw.index(365) as u16,
    };
    let mut home = Home::sound(setting);
    let fault = any(draw, FaultId::ALL).fault();
    if (fault.fits)(&home) {
        let numbers = fault.complete(&Parameters::new(), draw).unwrap_or_default();
        (fault.apply)(&numbers, &mut home);
    }
    let plant = &mut home.plant;
    plant.thermostats.iter_mut().for_each(|t| t.calling = draw.chance(0.5));
    plant.limit.tripped |= draw.chance(0.15);
    if draw.chance(0.2) {
        let pole = draw.index(2);
        plant.limit.poles[pole] = Contact::Open;
    }
    if draw.chance(0.3) {
        plant.cable_coupling = draw.between(0.0, 600e-12);
    }
    for breaker in plant.panel.breakers.iter_mut().filter(|b| b.feeds == Circuit::Heater) {
        if draw.chance(0.3) {
            breaker.handle = Handle::Off;
        }
    }
    let ends: Vec<End> = End::all().filter(|e| plant.wiring.exists(e.wire)).collect();
    for _ in 0..draw.index(4) {
        let end = any(draw, &ends);
        plant.wiring.joint_mut(end).on = draw.chance(0.4).then(|| any(draw, Screw::ALL)).filter(|s| {
            // A screw of a breaker that is not there cannot take a wire.
            !matches!(s, Screw::S1 | Screw::S2)
        });
    }
    home
}

fn bridges(draw: &mut Draw) -> Vec<Bridge> {
    let points: Vec<Point> = Screw::ALL
        .iter()
        .filter(|s| !matches!(s, Screw::S1 | Screw::S2))
        .map(|s| Point::from(*s))
        .chain(End::all().map(Point::from))
        .collect();
    (0..1 + draw.index(3))
        .map(|_| Bridge::ohms(any(draw, &points), any(draw, &points), Ohms(any(draw, &BRIDGES))))
        .collect()
}
