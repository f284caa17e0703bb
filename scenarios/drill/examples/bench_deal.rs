//! Times dealing: a drill settled from its seed, its weeks of household lived, and beside them in the same run a
//! reference that any machine can be judged by: a million words of the seeded generator.
//!
//! usage: bench_deal [DRILLS]; prints one line of JSON, times in milliseconds.

#![allow(clippy::disallowed_methods)] // A benchmark reads the clock.

use std::time::Instant;

use bench::Mode;
use drill::Order;
use quantity::Draw;

/// Words of the reference.
const WORDS: u32 = 1_000_000;

fn main() {
    let drills: u32 = std::env::args().nth(1).and_then(|a| a.parse().ok()).unwrap_or(200);
    let orders: Vec<Order> = (0..drills).map(|seed| Order::chance(seed, Mode::Solo)).collect();
    let reference = reference();
    let mut settled = Vec::new();
    let mut lived = Vec::new();
    for order in &orders {
        let started = Instant::now();
        let known = drill::settle(order).is_ok();
        settled.push(started.elapsed().as_secs_f64() * 1e3);
        let started = Instant::now();
        if known && drill::make(order).is_ok() {
            lived.push(started.elapsed().as_secs_f64() * 1e3);
        }
    }
    let (settled, lived) = (spread(settled), spread(lived));
    println!(
        "{{\"drills\": {drills}, \"settled\": {settled:?}, \"with its weeks\": {lived:?}, \"of each\": \"median, nine of ten, longest\", \"reference\": {reference:.2}, \"settled over reference\": {:.3}, \"weeks over reference\": {:.2}}}",
        settled[0] / reference,
        lived[0] / reference
    );
}

/// The median of five runs.
fn reference() -> f64 {
    let once = |_| {
        let started = Instant::now();
        let mut draw = Draw::new(1, "reference");
        let sum = (0..WORDS).fold(0_u64, |sum, _| sum ^ draw.word());
        std::hint::black_box(sum);
        started.elapsed().as_secs_f64() * 1e3
    };
    spread((0..5).map(once).collect())[0]
}

/// Median, nine of ten, longest.
fn spread(mut times: Vec<f64>) -> [f64; 3] {
    times.sort_by(f64::total_cmp);
    let at = |share: f64| {
        let index = (share * (times.len().saturating_sub(1)) as f64).round() as usize;
        (times.get(index).copied().unwrap_or(0.0) * 100.0).round() / 100.0
    };
    [at(0.5), at(0.9), at(1.0)]
}
