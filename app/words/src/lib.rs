//! Words: turns typed facts into sentences. The only place where what is computed becomes language.
//!
//! Sentences live in `assets/words/`, one file a language; this crate picks them and fills in the numbers in
//! the reader's units. Nothing here computes physics or a score.

use std::rc::Rc;

mod acts;
mod book;
mod harms;
mod language;
mod names;
mod outcomes;
mod people;
mod score;
mod sights;
mod trace;
mod units;

pub use book::{Book, Fill};
pub use language::Language;
pub use units::Units;

/// A language and a choice of units.
pub struct Voice {
    book: Rc<Book>,
    units: Units,
}

impl Voice {
    /// English, in the given units.
    pub fn english(units: Units) -> Self {
        Self::new(Rc::new(Book::english()), units)
    }

    /// The voice of a book, in the given units.
    pub const fn new(book: Rc<Book>, units: Units) -> Self {
        Self { book, units }
    }

    /// The units it speaks.
    pub const fn units(&self) -> Units {
        self.units
    }

    /// Sentences asked for and not in the book, for tests.
    pub fn missing(&self) -> Vec<String> {
        self.book.missing().into_iter().collect()
    }

    /// Whether the book, or the English one behind it, has a text.
    pub fn has(&self, id: &str) -> bool {
        self.book.has(id)
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
