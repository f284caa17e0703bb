//! What the page holds: the job under way, the desk it is worked on, and what the device keeps of both.

mod aside;
mod desk;
mod journal;
mod keeping;
mod ongoing;
mod provider;
mod work;
mod world;

pub use aside::{forget_unread, unread};
pub use desk::{Desk, Lead, Setting, Standing, Suspect, Tab};
pub use journal::{Head, clear};
pub use keeping::Keeping;
pub use ongoing::Ongoing;
#[cfg(debug_assertions)]
pub use provider::Held;
pub use provider::{WorkHandle, WorkProvider, use_steady, use_work};
pub use work::{Msg, Rest, Running, Work};
pub use world::World;
