//! The doors: practise alone, sit an exam, or hand drills out.

mod enter;
mod first;
mod page;
mod practise;
mod ready;
mod resume;

pub use enter::Enter;
pub use page::{Doors, Invited};
pub use ready::Ready;
