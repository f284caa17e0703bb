//! The debrief: what a finished drill amounted to, computed again from its acts.

mod accounts;
mod bars;
mod current;
mod drawing;
mod endings;
mod hand_in;
mod inspector;
mod judged;
mod markers;
mod page;
mod phase;
mod read;
mod report;
mod sayings;
mod scale;
mod sheet;
mod steps;
mod tabs;
mod verdict;
mod view;
mod water;
mod would;

pub use accounts::points;
pub use endings::ending_words;
pub use hand_in::HandIn;
pub use page::Debrief;
pub use read::{Reading, use_sheet};
pub use view::SheetView;
