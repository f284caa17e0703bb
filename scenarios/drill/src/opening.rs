//! Opening files: what an instructor gives out after an exam so that candidates may read their debriefs.
//!
//! An opening names one drill by its digest. It is no lock: whoever has the program can make one. It keeps an
//! honest candidate from the debrief until everybody has handed in; `docs/exam.md` says what it cannot do.

use quantity::Digest;
use serde::{Deserialize, Serialize};

use crate::order::{Order, RULES, plain};

/// Longest opening file read, in bytes.
const LARGEST_OPENING: usize = 10_000;

/// Opens the debriefs of one exam.
#[derive(Clone, PartialEq, Eq, Debug, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case", deny_unknown_fields)]
pub struct Opening {
    tankwright: Marker,
    rules: u32,
    /// Digest of the drill, as 32 hexadecimal digits.
    drill: String,
}

#[derive(Clone, Copy, PartialEq, Eq, Debug, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
enum Marker {
    Opening,
}

/// Why an opening file cannot be used.
#[derive(Clone, PartialEq, Eq, Debug, thiserror::Error)]
pub enum OpeningError {
    /// Not readable as an opening.
    #[error(
        "line {line}, column {column}: {problem}. Is it the opening file, and not a drill or an attempt?"
    )]
    Unreadable {
        /// Line, 1 the first.
        line: usize,
        /// Column.
        column: usize,
        /// What is wrong.
        problem: String,
    },
    /// Far too large.
    #[error("the file has {found} bytes; an opening file has a few hundred. Is it the right file?")]
    TooLarge {
        /// Bytes found.
        found: usize,
    },
    /// Other rules.
    #[error("this opening was made for rules {found}; this release has rules {RULES}")]
    OtherRules {
        /// Rules found.
        found: u32,
    },
}

/// A drill's digest. A learner who is given more time has a drill of their own, which one opening opens too.
fn digest(order: &Order) -> Digest {
    let same = Order { clock_minutes: None, limit_minutes: None, ..order.clone() };
    Digest::of(&serde_json::to_vec(&same).unwrap_or_default())
}

impl Opening {
    /// The opening of a drill, whatever its limits.
    pub fn of(order: &Order) -> Self {
        Self { tankwright: Marker::Opening, rules: RULES, drill: digest(order).to_string() }
    }

    /// Whether it opens this drill.
    pub fn opens(&self, order: &Order) -> bool {
        Digest::parse(&self.drill) == Some(digest(order))
    }

    /// Writes it as a file.
    pub fn write(&self) -> String {
        serde_json::to_string_pretty(self).unwrap_or_default()
    }

    /// Reads a file.
    pub fn read(text: &str) -> Result<Self, OpeningError> {
        if text.len() > LARGEST_OPENING {
            return Err(OpeningError::TooLarge { found: text.len() });
        }
        let opening: Self = serde_json::from_str(text).map_err(|e| OpeningError::Unreadable {
            line: e.line(),
            column: e.column(),
            problem: plain(&e),
        })?;
        if opening.rules == RULES {
            Ok(opening)
        } else {
            Err(OpeningError::OtherRules { found: opening.rules })
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use bench::Mode;

    #[test]
    fn an_opening_opens_its_drill_whatever_the_clock_and_no_other() {
        let order = Order::chance(5, Mode::Exam);
        let opening = Opening::read(&Opening::of(&order).write()).unwrap();
        assert!(opening.opens(&order));
        assert!(opening.opens(&Order { clock_minutes: Some(90), limit_minutes: Some(300), ..order.clone() }));
        assert!(!opening.opens(&Order { seed: 6, ..order }));
    }

    #[test]
    fn another_file_is_refused_with_its_place() {
        let drill = Order::chance(5, Mode::Exam).write();
        assert!(matches!(Opening::read(&drill), Err(OpeningError::Unreadable { line: 2, .. })));
        assert!(matches!(Opening::read(&" ".repeat(20_000)), Err(OpeningError::TooLarge { .. })));
    }
}
