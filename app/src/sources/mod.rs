//! "Where does this come from?": every tagged constant of the simulated world, to search and to read.

pub mod entry;
mod filter;
pub mod group;
mod page;

pub use page::Sources;
