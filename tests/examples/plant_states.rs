//! Writes networks of the heater in many states, each as a SPICE netlist with our own solution beside it, for
//! `tests/reference/network/check.py`: faults from the catalogue, wires lifted and crossed, the meter and hands in
//! any place, all supplies.
//!
//! usage: plant_states FOLDER [COUNT]

use std::collections::{BTreeMap, BTreeSet};
use std::fs;
use std::path::Path;
use std::process::ExitCode;

use plant::climate::Climate;
use plant::electrical::Bridge;
use plant::fault::{FaultId, Parameters};
use plant::home::{Home, Setting};
use plant::household::HouseholdKind;
use plant::{
    BURNT_OFF, BoxKind, Breaker, Circuit, Contact, End, Handle, HeaterModel, InLineBox, Layout, Plant, Point,
    Screw, Service, ServiceKind, Stab,
};
use quantity::{Amps, Draw, Ohms};

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

/// Houses tried for a fault before it is said to fit none.
const TRIES: usize = 2000;

fn write(folder: &Path, count: u64) -> Result<(), String> {
    fs::create_dir_all(folder).map_err(|e| e.to_string())?;
    let mut met = Met::default();
    for k in 0..count {
        let mut draw = Draw::new(k, "plant states");
        // One fault after the other, so that the rare ones have their share.
        let wanted = FaultId::ALL[k as usize % FaultId::ALL.len()];
        let mut home = house(&mut draw, wanted, &mut met)?;
        disorder(&mut draw, &mut home.plant);
        let bridges = bridges(&mut draw);
        let written = home.plant.netlist(&bridges, &format!("state {k}")).map_err(|e| e.to_string())?;
        for (ending, text) in [("cir", &written.netlist), ("sol", &written.solution)] {
            fs::write(folder.join(format!("state{k:04}.{ending}")), text).map_err(|e| e.to_string())?;
        }
    }
    println!("{count} states in {}", folder.display());
    met.tell(count)
}

/// What has occurred.
#[derive(Default)]
struct Met {
    supplies: BTreeMap<String, usize>,
    faults: BTreeMap<FaultId, usize>,
    /// Faults whose network, once they were put in, was another than before.
    shown: BTreeSet<FaultId>,
}

impl Met {
    /// Prints the counts; fails when a supply or fault is absent from a run that has room for all of them.
    fn tell(&self, count: u64) -> Result<(), String> {
        let supplies: Vec<String> = self.supplies.iter().map(|(name, n)| format!("{name} {n}")).collect();
        println!("supplies: {}", supplies.join(", "));
        println!(
            "faults: {} of {} put in, {} of them seen by the network",
            self.faults.len(),
            FaultId::ALL.len(),
            self.shown.len()
        );
        let missing: Vec<String> =
            (FaultId::ALL.iter().filter(|id| !self.faults.contains_key(id)).map(ToString::to_string))
                .chain(
                    ServiceKind::ALL
                        .iter()
                        .map(|kind| format!("{kind:?}"))
                        .filter(|name| !self.supplies.contains_key(name)),
                )
                .collect();
        if missing.is_empty() || count < FaultId::ALL.len() as u64 {
            return Ok(());
        }
        Err(format!("absent: {}", missing.join(", ")))
    }
}

fn any<T: Copy>(draw: &mut Draw, all: &[T]) -> T {
    all[draw.index(all.len())]
}

/// A house of any kind on any supply with this fault in it, drawn until one bears it.
fn house(draw: &mut Draw, wanted: FaultId, met: &mut Met) -> Result<Home, String> {
    for _ in 0..TRIES {
        let setting = Setting {
            heater: any(draw, HeaterModel::ALL),
            household: any(draw, HouseholdKind::ALL),
            climate: any(draw, Climate::ALL),
            day: 1 + draw.index(365) as u16,
            in_line: None,
            location: Default::default(),
        };
        let mut home = Home::sound(setting);
        supply(draw, &mut home.plant);
        home.plant.thermostats.iter_mut().for_each(|t| t.calling = draw.chance(0.5));
        let fault = wanted.fault();
        if !(fault.fits)(&home) {
            continue;
        }
        let network = |home: &Home| home.plant.netlist(&[], "").map(|n| n.netlist).map_err(|e| e.to_string());
        let before = network(&home)?;
        let numbers = fault.complete(&Parameters::new(), draw).map_err(|e| e.to_string())?;
        (fault.apply)(&numbers, &mut home);
        if network(&home)? != before {
            met.shown.insert(wanted);
        }
        *met.faults.entry(wanted).or_default() += 1;
        *met.supplies.entry(format!("{:?}", home.plant.service.kind)).or_default() += 1;
        return Ok(home);
    }
    Err(format!("{wanted} fits none of {TRIES} houses"))
}

/// Contacts, handles, stabs and wires in any state, beside the fault.
fn disorder(draw: &mut Draw, plant: &mut Plant) {
    plant.limit.tripped |= draw.chance(0.15);
    if draw.chance(0.2) {
        let pole = draw.index(2);
        plant.limit.poles[pole] = Contact::Open;
    }
    if let Some(limit) = &mut plant.lower_limit {
        limit.tripped |= draw.chance(0.15);
        if draw.chance(0.2) {
            limit.poles[draw.index(2)] = Contact::Open;
        }
    }
    if draw.chance(0.3) {
        plant.beside_live = quantity::Metres(draw.between(0.0, 10.0));
    }
    for breaker in plant.panel.breakers.iter_mut().filter(|b| b.feeds_heater()) {
        if draw.chance(0.3) {
            breaker.handle = Handle::Off;
        }
        if !breaker.is_single() && draw.chance(0.15) {
            let stab = any(draw, Stab::ALL);
            breaker.stabs = [Some(stab); 2];
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
}

/// Any supply a heater of this wiring can stand on, with a neutral, legs and loads of any state.
fn supply(draw: &mut Draw, plant: &mut Plant) {
    let kinds: Vec<_> =
        ServiceKind::ALL.iter().filter(|k| k.hot_neutral() == plant.wiring.hot_neutral).copied().collect();
    let mut service = Service::sound(any(draw, &kinds));
    if draw.chance(0.25) {
        service.neutral = if draw.chance(0.5) { BURNT_OFF } else { Ohms(draw.between(0.05, 5.0)) };
    }
    if draw.chance(0.1) {
        service.impedance[draw.index(2)] = BURNT_OFF;
    }
    for load in service.loads.each_mut() {
        *load = if draw.chance(0.2) { Ohms(f64::INFINITY) } else { Ohms(draw.between(8.0, 120.0)) };
    }
    plant.service = service;
    if draw.chance(0.25) {
        let mut fitted = InLineBox::sound(any(draw, BoxKind::ALL), Amps(30.0));
        fitted.closed = draw.chance(0.7);
        if draw.chance(0.3) {
            fitted.fuses[draw.index(2)] = Contact::Open;
        }
        plant.put_in_line(fitted);
    }
    let two_legs = !plant.wiring.hot_neutral && plant.plate.layout != Layout::OffPeak;
    if two_legs && draw.chance(0.2) {
        plant.wiring.second_source = true;
        plant.panel.breakers.push(Breaker::sound(Circuit::SecondSource, Amps(30.0)));
    }
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
