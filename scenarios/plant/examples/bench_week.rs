//! Times a week of each household with each fault on every heater (or with and on those named), and counts what it holds.
//! The time is the thread's own on the processor where the system tells it, so that a busy machine changes it little.
//!
//! usage: bench_week [FAULT...] [HEATER...]

use plant::climate::Climate;
use plant::fault::{FaultId, Parameters};
use plant::household::{self, HouseholdKind, Life};
use plant::{HeaterModel, Home, Setting};
use quantity::Draw;

/// Milliseconds this thread has run, if the system counts them.
#[allow(clippy::disallowed_methods, reason = "a benchmark reads a clock; nothing of the world does")]
fn milliseconds(start: std::time::Instant) -> f64 {
    let counted = std::fs::read_to_string("/proc/thread-self/schedstat").ok();
    let own = counted.and_then(|text| text.split(' ').next()?.parse::<f64>().ok()).filter(|ns| *ns > 0.0);
    own.map_or_else(|| start.elapsed().as_secs_f64() * 1e3, |ns| ns / 1e6)
}

#[allow(clippy::disallowed_methods, reason = "a benchmark reads a clock; nothing of the world does")]
fn main() {
    let mut all = Vec::new();
    let named = std::env::args().skip(1);
    let (faults, heaters): (Vec<_>, Vec<_>) =
        named.partition(|name| FaultId::ALL.iter().any(|id| id.to_string() == *name));
    let start = std::time::Instant::now();
    for (i, id) in FaultId::ALL.iter().enumerate() {
        if !faults.is_empty() && !faults.contains(&id.to_string()) {
            continue;
        }
        for (j, &heater) in HeaterModel::ALL.iter().enumerate() {
            if !heaters.is_empty() && !heaters.iter().any(|name| name == heater.name()) {
                continue;
            }
            let seed = j as u64;
            let setting = Setting {
                heater,
                household: HouseholdKind::ALL[(i + j) % HouseholdKind::ALL.len()],
                climate: Climate::ALL[i % 4],
                day: (1 + 36 * seed) as u16,
                in_line: None,
                location: Default::default(),
            };
            let mut home = Home::sound(setting);
            if !(id.fault().fits)(&home) {
                continue;
            }
            let numbers = id.fault().complete(&Parameters::new(), &mut Draw::new(seed, "fault"));
            (id.fault().apply)(&numbers.unwrap_or_default(), &mut home);
            let life = Life { patience: u16::MAX, ..Life::drawn(&mut Draw::new(seed, "life")) };
            let before = milliseconds(start);
            let week = household::week(&mut home, life, &mut Draw::new(seed, "draws"), 7);
            let ms = milliseconds(start) - before;
            all.push(ms);
            println!("{id} {:12} {ms:7.1} ms, {} draws", setting.heater.name(), week.draws.len());
        }
    }
    all.sort_by(f64::total_cmp);
    let above = all.iter().filter(|ms| **ms > 60.0).count();
    let (middle, most) = (all[all.len() / 2], all[all.len() - 1]);
    println!("{} weeks: median {middle:.1} ms, longest {most:.1} ms, {above} above 60 ms", all.len());
}
