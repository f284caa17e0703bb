//! Times a week of each household with each fault (or with those named), and counts what it holds.

use plant::climate::Climate;
use plant::fault::{FaultId, Parameters};
use plant::household::{self, HouseholdKind, Life};
use plant::{HeaterModel, Home, Setting};
use quantity::Draw;

#[allow(clippy::disallowed_methods, reason = "a benchmark reads the clock; nothing of the world does")]
fn main() {
    let mut all = Vec::new();
    let named: Vec<String> = std::env::args().skip(1).collect();
    for (i, id) in FaultId::ALL.iter().enumerate() {
        if !named.is_empty() && !named.contains(&id.to_string()) {
            continue;
        }
        for seed in 0..4_u64 {
            let setting = Setting {
                heater: HeaterModel::ALL[seed as usize],
                household: HouseholdKind::ALL[(i + seed as usize) % 4],
                climate: Climate::ALL[i % 4],
                day: (1 + 50 * seed) as u16,
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
            let start = std::time::Instant::now();
            let week = household::week(&mut home, life, &mut Draw::new(seed, "draws"), 7);
            let ms = start.elapsed().as_secs_f64() * 1e3;
            all.push(ms);
            println!("{id} {:12} {ms:7.1} ms, {} draws", setting.heater.name(), week.draws.len());
        }
    }
    all.sort_by(f64::total_cmp);
    println!("median {:.1} ms, longest {:.1} ms", all[all.len() / 2], all[all.len() - 1]);
}
