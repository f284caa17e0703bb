//! The native program: builds the page, serves it on loopback, works on attempt files.
//!
//! One file per command (`build`, `serve`); each has its `Options`, read from the command line, and a `run`.

pub mod args;
pub mod build;
pub mod compile;
mod failure;
pub mod house;
pub mod notices;
pub mod open;
pub mod policy;
pub mod request;
pub mod serve;
pub mod server;
pub mod size;
pub mod statics;

pub use failure::Failure;
pub use server::Server;
