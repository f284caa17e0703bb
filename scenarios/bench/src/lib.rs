//! What a technician can do and see: one world, `Session`, and one door to it, [`reduce`].

pub mod action;
mod fact;
mod hearsay;
pub mod instrument;
mod loose;
pub mod minutes;
mod named;
pub mod person;
pub mod prices;
mod reduce;
pub mod session;
pub mod shown;
mod sight;
mod sources;
mod things;
pub mod view;

pub use action::*;
pub use hearsay::Hearsay;
pub use instrument::Kit;
pub use loose::Lost;
pub use plant::household::Question;
pub use reduce::{Waiting, reduce, refusal};
pub use session::*;
pub use shown::*;
pub use sources::sources;
