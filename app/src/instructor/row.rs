//! One row of the class table: an attempt made, folded and judged again.

use bench::Mode;
use drill::{Attempt, Grader, Rubric};

/// What an attempt amounted to.
#[derive(Clone, PartialEq, Debug)]
pub struct Row {
    /// The row as the table and its file have it.
    pub class: drill::Row,
    /// How the drill was run.
    pub mode: Mode,
}

/// Works an attempt through again.
pub fn judge(grader: &mut Grader, file: &str, attempt: &Attempt) -> Result<Row, String> {
    let class =
        grader.row(file, attempt, &Rubric::plain()).map_err(|error| crate::text::order_error(&error))?;
    Ok(Row { class, mode: attempt.order.mode })
}
