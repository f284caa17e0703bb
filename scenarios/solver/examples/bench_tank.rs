//! Prints milliseconds for a simulated day of draws with two switching sources, by draw pattern.
#![allow(clippy::disallowed_methods, reason = "the clock is what is printed")]
#![allow(clippy::unwrap_used, dead_code, reason = "shared with the tests")]

#[path = "../tests/tank/household.rs"]
mod household;

use household::{HIGH, LOW, MEDIUM, day, tank};

fn main() {
    for (name, draws) in [("low", LOW), ("medium", MEDIUM), ("high", HIGH)] {
        let mut best = f64::INFINITY;
        let mut steps = 0;
        for _ in 0..20 {
            let start = std::time::Instant::now();
            let report = day(&tank(), draws, false).report;
            best = best.min(start.elapsed().as_secs_f64() * 1e3);
            steps = report.steps;
        }
        println!("{name}: {best:.3} ms per simulated day, {steps} steps");
    }
}
