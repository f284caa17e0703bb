//! Shared helpers of the checks: the browser that a check drives, and where things are.

pub mod browser;
pub mod cores;
pub mod tree;
