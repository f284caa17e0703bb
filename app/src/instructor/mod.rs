//! The instructor's desk: hand drills out, read attempts in.

mod collect;
mod collected;
mod desk;
mod hand_out;
mod handout;
mod page;
mod row;
mod square;
mod table;

pub use page::Instructor;
