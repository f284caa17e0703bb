//! The fault atlas: each fault walked beside the same house sound, here and now, and what looks most like it.

mod entry;
mod index;
mod page;
mod rows;
mod walked;

pub use page::Atlas;
