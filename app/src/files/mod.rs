//! Files that the reader gives to the page or takes from it. Nothing is sent anywhere.

mod copy;
mod pick;
mod save;

pub use copy::CopyText;
pub use pick::{FilePick, Picked};
pub use save::{file_name, save};
