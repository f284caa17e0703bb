//! The customer: what they say, what to ask, what to tell them, whom to call instead.

mod call_panel;
mod plate;
mod questions;
mod said;
mod tell;

pub use call_panel::Call;
pub use tell::spent;
