//! Quantities, deterministic mathematics, the seeded generator and the digest.
//!
//! Everything above this crate speaks these types at its public edges. SI inside; the units people read
//! on a screen are conversions here and nowhere else.

pub mod decimal;
pub mod det;
mod digest;
mod draw;
pub mod pairs;
mod provenance;
pub mod sort;
mod units;
pub mod witness;

pub use digest::{Chain, Digest};
pub use draw::Draw;
pub use provenance::{Constant, Figure, Kind, Listed, Shown, Tag};
pub use units::*;
