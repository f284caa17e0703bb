//! The kit and the parts van.

mod case;
mod shelves;
mod time;

pub use case::Kit;
pub use shelves::{VanShelves, on_the_van};
