//! "What can I do here?": the question mark on every page, its key, and what can be switched behind it.

mod button;
mod key;
pub mod offers;
mod setting;
mod switch;

pub use button::HereButton;
pub use offers::PageHere;
pub use setting::Setting;
pub use switch::Switch;
