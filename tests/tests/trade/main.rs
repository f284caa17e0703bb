//! The trade sheet's tables, section by section, computed by the simulated world and laid beside the sheet.
//!
//! Each check carries the sheet's own tag: the published document, `computed`, or `from memory`.

#![allow(clippy::unwrap_used, clippy::panic, reason = "a test program: a failure here is the answer")]

mod body;
mod codes;
mod controls;
mod elements;
mod heat;
mod rating;
mod scald;
mod supplies;
mod water;
