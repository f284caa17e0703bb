//! Words: turns typed facts into sentences. The only place where what is computed becomes language.
//!
//! Sentences live in `assets/words/`, one file a language; this crate picks them and fills in the numbers in
//! the reader's units. Nothing here computes physics or a score.

mod acts;
mod book;
mod harms;
mod names;
mod outcomes;
mod people;
mod score;
mod sights;
mod trace;
mod units;

pub use book::{Book, Fill};
pub use units::Units;

/// A language and a choice of units.
pub struct Voice {
    book: Book,
    units: Units,
}

impl Voice {
    /// English, in the given units.
    pub fn english(units: Units) -> Self {
        Self { book: Book::english(), units }
    }

    /// The units it speaks.
    pub const fn units(&self) -> Units {
        self.units
    }

    /// Sentences asked for and not in the book, for tests.
    pub fn missing(&self) -> Vec<String> {
        self.book.missing().into_iter().collect()
    }

    /// A fixed text by its name in the book.
    pub fn text(&self, id: &str) -> String {
        self.book.say(id, &[])
    }

    /// A text with places to fill.
    pub fn filled(&self, id: &str, fills: &[(&str, Fill)]) -> String {
        self.book.say(id, fills)
    }
}
