//! "What can I do here?": what the place at hand offers, what is refused now and why, the points that leads can go on.

mod button;
mod key;
mod offered;
pub mod sheet;
mod sound;

pub use button::HereButton;
pub use sound::Sounds;
