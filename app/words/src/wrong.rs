//! Why a code or a file cannot be used, in the reader's language. The native program says the same in English from
//! the errors themselves; a test holds both together.

use drill::exam::OpeningError;
use drill::{AttemptError, CodeError, OrderError, RULES};
use plant::fault::FaultError;

use crate::Voice;
use crate::book::Fill;

/// A number as its error writes it.
fn plain(number: impl ToString) -> Fill {
    Fill::Text(number.to_string())
}

impl Voice {
    fn refused_rules(&self, id: &str, found: u32) -> String {
        self.filled(id, &[("found", plain(found)), ("rules", plain(RULES))])
    }

    /// Why a drill cannot be used.
    pub fn order_error(&self, error: &OrderError) -> String {
        match error {
            OrderError::Unreadable { line, column, problem } => self.filled(
                "wrong-order-unreadable",
                &[("line", plain(line)), ("column", plain(column)), ("problem", problem.as_str().into())],
            ),
            OrderError::OtherRules { found } => self.refused_rules("wrong-order-rules", *found),
            OrderError::OutOfRange { name, low, high, value } => self.filled(
                "wrong-order-range",
                &[
                    ("name", (*name).into()),
                    ("low", plain(low)),
                    ("high", plain(high)),
                    ("value", plain(value)),
                ],
            ),
            OrderError::EmptyList => self.text("wrong-order-empty"),
            OrderError::NothingFits => self.text("wrong-order-nothing-fits"),
            OrderError::NoSecond => self.text("wrong-order-no-second"),
            OrderError::Fault(error) => self.fault_error(error),
        }
    }

    fn fault_error(&self, error: &FaultError) -> String {
        match error {
            FaultError::UnknownParameter { id, name, known } => self.filled(
                "wrong-fault-unknown",
                &[("id", id.name().into()), ("name", name.as_str().into()), ("known", known.as_str().into())],
            ),
            FaultError::OutOfRange { id, name, low, high, unit, value } => self.filled(
                "wrong-fault-range",
                &[
                    ("id", id.name().into()),
                    ("name", (*name).into()),
                    ("low", plain(low)),
                    ("high", plain(high)),
                    ("unit", (*unit).into()),
                    ("value", plain(value)),
                ],
            ),
            FaultError::DoesNotFit { id } => self.filled("wrong-fault-house", &[("id", id.name().into())]),
        }
    }

    /// Why a code cannot be used.
    pub fn code_error(&self, error: &CodeError) -> String {
        match error {
            CodeError::Character { found, place } => {
                self.filled("wrong-code-character", &[("found", plain(found)), ("place", plain(place))])
            }
            CodeError::Check => self.text("wrong-code-check"),
            CodeError::Length { found } => self.filled("wrong-code-length", &[("found", plain(found))]),
            CodeError::OtherRules { found } => self.refused_rules("wrong-code-rules", *found),
            CodeError::NoRoom { what } => self.filled("wrong-code-no-room", &[("what", (*what).into())]),
            CodeError::Order(error) => self.order_error(error),
        }
    }

    /// Why an attempt cannot be used.
    pub fn attempt_error(&self, error: &AttemptError) -> String {
        match error {
            AttemptError::TooLarge { found } => self.filled(
                "wrong-attempt-large",
                &[("found", plain(found)), ("most", plain(drill::attempt::LARGEST_FILE))],
            ),
            AttemptError::Unreadable { line, column, problem } => self.filled(
                "wrong-attempt-unreadable",
                &[("line", plain(line)), ("column", plain(column)), ("problem", problem.as_str().into())],
            ),
            AttemptError::Drill { line, error } => self.filled(
                "wrong-attempt-drill",
                &[("line", plain(line)), ("error", self.order_error(error).into())],
            ),
            AttemptError::Code { line, error } => self.filled(
                "wrong-attempt-code",
                &[("line", plain(line)), ("error", self.code_error(error).into())],
            ),
            AttemptError::Act { act, line, problem } => self.filled(
                "wrong-attempt-act",
                &[("act", plain(act)), ("line", plain(line)), ("problem", problem.as_str().into())],
            ),
            AttemptError::OtherRules { found } => self.refused_rules("wrong-attempt-rules", *found),
            AttemptError::TooMany { found } => self.filled(
                "wrong-attempt-many",
                &[("found", plain(found)), ("most", plain(drill::attempt::MOST_ACTS))],
            ),
            AttemptError::Edited { act: 0, line } => {
                self.filled("wrong-attempt-edited-head", &[("line", plain(line))])
            }
            AttemptError::Edited { act, line } => {
                self.filled("wrong-attempt-edited", &[("act", plain(act)), ("line", plain(line))])
            }
            AttemptError::Cut { acts, links, place } => self.filled(
                "wrong-attempt-cut",
                &[("acts", plain(acts)), ("links", plain(links)), ("place", plain(place))],
            ),
        }
    }

    /// Why an opening file cannot be used.
    pub fn opening_error(&self, error: &OpeningError) -> String {
        match error {
            OpeningError::Unreadable { line, problem } => self.filled(
                "wrong-opening-unreadable",
                &[("line", plain(line)), ("problem", problem.as_str().into())],
            ),
            OpeningError::OtherRules { found } => self.refused_rules("wrong-opening-rules", *found),
        }
    }
}

#[cfg(test)]
mod tests {
    use drill::Order;
    use plant::FaultId;

    use super::*;
    use crate::Units;

    /// What the errors say of themselves and what the English book says are one text.
    #[test]
    fn the_page_says_what_the_errors_say() {
        let v = Voice::english(Units::Customary);
        let problem = || "a comma".to_owned();
        let id = FaultId::F13;
        let orders = [
            OrderError::Unreadable { line: 3, column: 4, problem: problem() },
            OrderError::OtherRules { found: 1 },
            OrderError::OutOfRange { name: "day", low: 1.0, high: 365.0, value: 400.5 },
            OrderError::EmptyList,
            OrderError::NothingFits,
            OrderError::NoSecond,
            OrderError::Fault(FaultError::UnknownParameter { id, name: "x".into(), known: "ohms".into() }),
            OrderError::Fault(FaultError::OutOfRange {
                id,
                name: "ohms",
                low: 0.05,
                high: 0.5,
                unit: "ohm",
                value: 7.0,
            }),
            OrderError::Fault(FaultError::DoesNotFit { id }),
        ];
        for error in &orders {
            assert_eq!(v.order_error(error), error.to_string());
        }
        let codes = [
            CodeError::Character { found: 'u', place: 5 },
            CodeError::Check,
            CodeError::Length { found: 7 },
            CodeError::OtherRules { found: 1 },
            CodeError::NoRoom { what: "a day" },
            CodeError::Order(OrderError::EmptyList),
        ];
        for error in &codes {
            assert_eq!(v.code_error(error), error.to_string());
        }
        let attempts = [
            AttemptError::TooLarge { found: 9_000_000 },
            AttemptError::Unreadable { line: 3, column: 4, problem: problem() },
            AttemptError::Drill { line: 2, error: OrderError::EmptyList },
            AttemptError::Code { line: 2, error: CodeError::Check },
            AttemptError::Act { act: 3, line: 9, problem: problem() },
            AttemptError::OtherRules { found: 1 },
            AttemptError::TooMany { found: 9000 },
            AttemptError::Edited { act: 0, line: 2 },
            AttemptError::Edited { act: 4, line: 12 },
            AttemptError::Cut { acts: 3, links: 2, place: 2 },
        ];
        for error in &attempts {
            assert_eq!(v.attempt_error(error), error.to_string());
        }
        let openings =
            [OpeningError::Unreadable { line: 1, problem: problem() }, OpeningError::OtherRules { found: 1 }];
        for error in &openings {
            assert_eq!(v.opening_error(error), error.to_string());
        }
        assert!(Order::read("{").is_err() && v.missing().is_empty());
    }
}
