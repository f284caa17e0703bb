//! The instructor's desk: hand drills out, read attempts in.

pub mod collect;
mod collected;
mod desk;
pub mod hand_out;
pub mod handout;
mod page;
mod row;
mod square;
mod table;

pub use page::Instructor;
