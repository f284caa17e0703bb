//! The debrief: what a finished drill amounted to, computed again from its acts.

pub mod accounts;
pub mod drawing;
mod endings;
pub mod figures;
mod hand_in;
pub mod inspector;
mod judged;
pub mod ladder;
mod ladder_words;
mod markers;
mod page;
pub mod phase;
mod plot;
mod read;
pub mod report;
pub mod sayings;
mod scale;
pub mod section;
pub mod sheet;
pub mod steps;
pub mod strip;
mod svg;
mod symbols;
pub mod tabs;
pub mod verdict;
mod view;
mod water;
pub mod would;

pub use accounts::points;
pub use endings::ending_words;
pub use hand_in::HandIn;
pub use page::Debrief;
pub use read::use_sheet;
pub use view::SheetView;
