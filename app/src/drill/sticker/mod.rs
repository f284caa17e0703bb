//! The wiring diagram that the factory glued inside the cover: how it was wired, never how it is wired now.

mod plan;
mod view;

pub use view::Sticker;
