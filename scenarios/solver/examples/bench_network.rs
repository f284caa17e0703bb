//! Times our solution of the benchmark network and writes its netlist for timing ngspice.
//!
//! Usage: `bench_network [POINTS [NETLIST]]`. Prints seconds for each point: the median and the best of
//! nine runs over that many points, each point with another source voltage and another load.

#![allow(
    clippy::disallowed_methods,
    reason = "a benchmark reads the clock; nothing of it enters the simulation"
)]

use std::hint::black_box;
use std::process::ExitCode;
use std::time::Instant;

use solver::network::{Complex, NetworkError, Plan, Scratch, Solution, spice};

mod sample;

fn main() -> ExitCode {
    let mut arguments = std::env::args().skip(1);
    let points = arguments.next().and_then(|n| n.parse().ok()).unwrap_or(100_001);
    let written = arguments.next().map_or(Ok(()), write);
    match written.and_then(|()| Ok(time(points)?)) {
        Ok((median, best)) => {
            println!("{median:e} {best:e}");
            ExitCode::SUCCESS
        }
        Err(error) => {
            eprintln!("{error}");
            ExitCode::FAILURE
        }
    }
}

/// Writes the netlist of the benchmark.
fn write(path: String) -> Result<(), Box<dyn std::error::Error>> {
    let sample = sample::benchmark();
    let text = spice::netlist(&sample.network, &sample.names, "benchmark", sample::HERTZ)?;
    Ok(std::fs::write(path, text)?)
}

/// Median and best time for one point.
fn time(points: u32) -> Result<(f64, f64), NetworkError> {
    let mut network = sample::benchmark().network;
    let plan = Plan::new(&network)?;
    let (mut scratch, mut solution) = (Scratch::default(), Solution::default());
    let load = network.branches.iter().position(|b| b.admittance.re == 1.0 / 12.8).unwrap_or_default();
    let mut runs = [0.0; 9];
    for run in &mut runs {
        let start = Instant::now();
        for point in 0..points {
            let part = f64::from(point) / f64::from(points);
            if let Some(source) = network.fixed.get_mut(1) {
                source.volts = Complex::real(120.0 * part);
            }
            if let Some(branch) = network.branches.get_mut(load) {
                branch.admittance = Complex::real(1.0 / (12.0 + part));
            }
            plan.solve_into(black_box(&network), &mut scratch, &mut solution)?;
            black_box(&solution);
        }
        *run = start.elapsed().as_secs_f64() / f64::from(points);
    }
    runs.sort_by(f64::total_cmp);
    Ok((runs[4], runs[0]))
}
