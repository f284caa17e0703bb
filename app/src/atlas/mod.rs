//! The fault atlas: each fault walked beside the same house sound, here and now, and what looks most like it.

mod cut;
pub mod entry;
pub mod index;
mod page;
mod rows;
pub mod walked;

pub use page::Atlas;
