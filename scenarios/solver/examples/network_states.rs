//! Writes sample networks and our solutions of them into a folder, for the check against other solvers.
//!
//! Usage: `network_states FOLDER [COUNT]`. Each state is a pair of files, `NAME.cir` and `NAME.sol`.

use std::process::ExitCode;

use solver::network::{solve, spice};

mod sample;

fn main() -> ExitCode {
    let mut arguments = std::env::args().skip(1);
    let Some(folder) = arguments.next() else {
        eprintln!("usage: network_states FOLDER [COUNT]");
        return ExitCode::FAILURE;
    };
    let count = arguments.next().and_then(|n| n.parse().ok()).unwrap_or(200);
    match write(std::path::Path::new(&folder), count) {
        Ok(()) => ExitCode::SUCCESS,
        Err(error) => {
            eprintln!("{folder}: {error}");
            ExitCode::FAILURE
        }
    }
}

fn write(folder: &std::path::Path, count: u64) -> Result<(), Box<dyn std::error::Error>> {
    std::fs::create_dir_all(folder)?;
    for number in 0..count {
        let name = format!("sample{number:04}");
        let sample = sample::state(number);
        let solution = solve(&sample.network)?;
        let netlist = spice::netlist(&sample.network, &sample.names, &name, sample::HERTZ)?;
        std::fs::write(folder.join(format!("{name}.cir")), netlist)?;
        std::fs::write(folder.join(format!("{name}.sol")), spice::solution(&solution.volts, &sample.names))?;
    }
    Ok(())
}
