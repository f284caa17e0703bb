//! The debrief: what a finished drill amounted to, computed again from its acts.

mod accounts;
mod drawing;
mod endings;
mod figures;
mod hand_in;
mod inspector;
mod judged;
mod ladder;
mod ladder_words;
mod markers;
mod page;
mod phase;
mod plot;
mod read;
mod report;
mod sayings;
mod scale;
mod section;
mod sheet;
mod steps;
mod strip;
mod svg;
mod symbols;
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
