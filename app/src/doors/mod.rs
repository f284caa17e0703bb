//! The doors: practise alone, sit an exam, or hand drills out.

mod enter;
pub mod first;
mod page;
pub mod practise;
mod ready;
pub mod resume;

pub use enter::Enter;
pub use page::{Doors, Invited};
pub use ready::Ready;
