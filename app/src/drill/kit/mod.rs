//! The kit and the parts van.

mod case;
mod shelves;
mod time;

pub use case::Kit;
#[cfg(test)]
pub use shelves::every_part;
pub use shelves::{VanShelves, on_the_van};
