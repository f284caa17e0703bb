//! The exam's door, its clock, and what opens its debrief.

mod clock;
mod door;
mod expect;
mod locked;

pub use clock::ExamClock;
pub use door::ExamDoor;
pub use expect::Expect;
pub use locked::Locked;
