//! The meter, its leads, the clamp.

mod case;
mod dial;
mod display;
mod leads;
mod points;
mod prove;
mod settle;

pub use case::Meter;
pub use points::{ends, points_of};
