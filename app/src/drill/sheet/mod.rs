//! The whole drawing: load center, heater in section, pipes, taps, the customer, the van.

mod drawing;
mod found;
pub mod frame;
mod heater;
pub mod hot;
mod in_line;
mod leads;
mod load_center;
mod main_valve;
mod people;
mod pipes;
mod spot;
mod taps;

pub use drawing::Sheet;
pub use found::soot;
pub use spot::Spot;
