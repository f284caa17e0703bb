//! `tankwright`: see `tankwright help`.

use std::process::ExitCode;

fn main() -> ExitCode {
    match host::args::Command::from_env().and_then(host::args::Command::run) {
        Ok(()) => ExitCode::SUCCESS,
        Err(failure) => {
            eprintln!("tankwright: {failure}");
            ExitCode::FAILURE
        }
    }
}
