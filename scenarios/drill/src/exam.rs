//! Exams: the file that opens a debrief, and a longer clock for those who are entitled to one.
//!
//! What this cannot prevent: everything a page needs to run a drill is in the page, so somebody who reads
//! its memory can read the fault. The opening file keeps an honest candidate's page shut until the
//! instructor hands it out; it is no secret that holds against an attack.

use quantity::Digest;
use serde::{Deserialize, Serialize};

use crate::order::{Order, RULES, plain};

/// The instructor's file that opens the debrief of an exam drill.
#[derive(Clone, PartialEq, Debug, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case", deny_unknown_fields)]
pub struct Opening {
    tankwright: Marker,
    rules: u32,
    /// Digests of the drills it opens.
    opens: Vec<String>,
}

#[derive(Clone, Copy, PartialEq, Eq, Debug, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
enum Marker {
    Opening,
}

/// Why an opening file cannot be used.
#[derive(Clone, PartialEq, Debug, thiserror::Error)]
pub enum OpeningError {
    /// Not readable.
    #[error("line {line}: {problem}. Is it the instructor's opening file?")]
    Unreadable {
        /// Line.
        line: usize,
        /// What is wrong.
        problem: String,
    },
    /// Other rules.
    #[error("this opening file was made for rules {found}; this release has rules {RULES}")]
    OtherRules {
        /// Rules found.
        found: u32,
    },
}

/// What an exam drill is known by: the drill without its clock, so that one file opens it for everybody
/// whatever time they were given.
pub fn digest(order: &Order) -> Digest {
    let bare = Order { clock_minutes: None, ..order.clone() };
    Digest::of(format!("opening\u{0}{}", bare.write()).as_bytes())
}

impl Opening {
    /// A file for some drills.
    pub fn of(orders: &[Order]) -> Self {
        let opens = orders.iter().map(|order| digest(order).to_string()).collect();
        Self { tankwright: Marker::Opening, rules: RULES, opens }
    }

    /// Whether it opens a drill.
    pub fn opens(&self, order: &Order) -> bool {
        self.opens.contains(&digest(order).to_string())
    }

    /// Writes it.
    pub fn write(&self) -> String {
        crate::json::lines(self)
    }

    /// Reads it.
    pub fn read(text: &str) -> Result<Self, OpeningError> {
        let opening: Self = serde_json::from_str(text)
            .map_err(|e| OpeningError::Unreadable { line: e.line(), problem: plain(&e) })?;
        if opening.rules != RULES {
            return Err(OpeningError::OtherRules { found: opening.rules });
        }
        Ok(opening)
    }
}

/// The same drill with a longer clock for one learner: half as long again is a factor of 1.5. A drill
/// without a clock stays without one.
pub fn with_extra_time(order: &Order, factor: f64) -> Order {
    let longer = |minutes: u16| (f64::from(minutes) * factor.clamp(1.0, 4.0)).ceil().min(1023.0) as u16;
    Order { clock_minutes: order.clock_minutes.map(longer), ..order.clone() }
}

#[cfg(test)]
mod tests {
    use bench::Mode;

    use super::*;

    #[test]
    fn a_file_opens_its_drills_and_no_others() {
        let order = Order { clock_minutes: Some(40), ..Order::chance(7, Mode::Exam) };
        let file = Opening::read(&Opening::of(std::slice::from_ref(&order)).write()).unwrap();
        assert!(file.opens(&order));
        assert!(!file.opens(&Order::chance(8, Mode::Exam)));
        let slower = with_extra_time(&order, 1.5);
        assert_eq!(slower.clock_minutes, Some(60));
        assert!(file.opens(&slower));
        assert_ne!(crate::code::encode(&slower), crate::code::encode(&order));
    }

    #[test]
    fn nonsense_is_refused_with_its_place() {
        assert!(matches!(Opening::read("{\n\"a\":1}"), Err(OpeningError::Unreadable { line: 2, .. })));
        let other = Opening::of(&[]).write().replace(&format!("\"rules\": {RULES}"), "\"rules\": 90");
        assert_eq!(Opening::read(&other), Err(OpeningError::OtherRules { found: 90 }));
    }
}
