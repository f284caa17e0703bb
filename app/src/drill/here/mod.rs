//! "What can I do here?": what the place at hand offers, what is refused now and why, the points that leads can go on.

mod button;
mod key;
mod offered;
mod setting;
pub mod sheet;

pub use button::HereButton;
pub use setting::Setting;
