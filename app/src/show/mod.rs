//! The demonstration view: the job under way for a whole room to see, with the inside shown. Whoever teaches plays
//! the acts; the heater in section, its figures and its circuit follow.

mod film;
pub mod inside;
mod page;
pub mod start;

pub use page::Show;
