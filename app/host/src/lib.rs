//! The native program: builds the page, serves it on loopback, works on attempt files.
//!
//! One file per command (`build`, `serve`, `trace`, `grade`); each has its `Options`, read from the command line, and a `run`.

pub mod args;
pub mod attempts;
pub mod build;
pub mod compile;
mod failure;
pub mod grade;
pub mod house;
pub mod notices;
pub mod open;
pub mod pack;
pub mod policy;
pub mod request;
pub mod serve;
pub mod server;
pub mod size;
pub mod sounds;
pub mod squeeze;
pub mod statics;
pub mod trace;

pub use failure::Failure;
pub use server::Server;

/// Prints to standard output; a reader that went away (`| head`) is no failure.
fn say(text: &str) {
    use std::io::Write as _;
    let _ = std::io::stdout().lock().write_all(text.as_bytes());
}
