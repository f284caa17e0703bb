//! The exam's door, its clock, and what opens its debrief.

pub mod clock;
mod door;
mod expect;
pub mod locked;

pub use clock::ExamClock;
pub use door::ExamDoor;
pub use expect::Expect;
pub use locked::Locked;
