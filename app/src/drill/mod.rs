//! The drill: the customer, the drawing, the meter, the kit, the log, on one sheet.

pub mod call;
pub mod detail;
mod focus;
pub mod guide;
#[cfg(test)]
mod had;
pub mod head;
pub mod here;
pub mod hint;
pub mod kit;
pub mod known;
#[cfg(test)]
mod loose;
pub mod meter;
pub mod no_job;
pub mod notes;
pub mod over;
pub mod place;
mod rehearsal;
mod screen;
pub mod sheet;
mod sound;
pub mod sticker;
pub mod tabs;

pub use screen::Drill;
