//! The drill: the customer, the drawing, the meter, the kit, the log, on one sheet.

mod call;
mod detail;
mod focus;
mod head;
pub mod hint;
mod kit;
pub mod known;
mod meter;
mod notes;
mod over;
mod place;
mod screen;
pub mod sheet;
mod tabs;

pub use screen::Drill;
