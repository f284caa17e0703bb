//! Whole days of a household on the layered tank: convergence, balance.
#![allow(clippy::unwrap_used, reason = "a test")]

mod convergence;
mod household;
