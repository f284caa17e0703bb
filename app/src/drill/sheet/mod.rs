//! The whole drawing: load center, heater in section, pipes, taps, the customer, the van.

mod drawing;
mod heater;
pub mod hot;
mod load_center;
mod people;
mod pipes;
mod spot;
mod taps;

pub use drawing::Sheet;
pub use spot::Spot;
