//! What surrounds every page: routes, footer, announcements.

mod act;
mod app;
mod aside;
mod busy;
mod choice;
mod clear;
mod dialog;
mod footer;
mod languages;
mod later;
mod live;
pub mod passing;
mod reference;
mod toolbar;
mod top;

pub use act::{Act, act_slug};
pub use app::App;
pub use aside::Unread;
pub use busy::Busy;
pub use choice::{Choice, Choices};
pub use clear::ClearDevice;
pub use dialog::{Dialog, DialogHandle, use_dialog};
pub use footer::Footer;
pub use languages::Languages;
pub use later::{use_frames, use_half_a_pace_later, use_later, use_paced, use_rest, use_share, use_unfolded};
pub use live::{Live, tone};
pub use reference::{Reference, coming, has_words, search};
pub use toolbar::use_toolbars;
pub use top::Top;
