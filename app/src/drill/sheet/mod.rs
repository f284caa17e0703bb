//! The whole drawing: load center, heater in section, pipes, taps, the customer, the van.

mod drawing;
pub mod frame;
mod heater;
pub mod hot;
mod in_line;
mod load_center;
mod people;
mod pipes;
mod spot;
mod taps;

pub use drawing::Sheet;
pub use spot::Spot;
