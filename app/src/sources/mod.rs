//! "Where does this come from?": every tagged constant of the simulated world, to search and to read.

mod entry;
mod filter;
mod group;
mod page;

pub use page::Sources;
