//! One row of the class table: an attempt made, folded and judged again.

use bench::Mode;
use drill::score::score;
use drill::{Attempt, Case, Rubric};

use crate::compose::name_drill;

/// What an attempt amounted to.
#[derive(Clone, PartialEq, Debug)]
pub struct Row {
    /// The row as the table and its file have it.
    pub class: drill::Row,
    /// How the drill was run.
    pub mode: Mode,
}

/// Works an attempt through again.
pub fn judge(file: &str, attempt: &Attempt) -> Result<Row, String> {
    let made = drill::make(&attempt.order).map_err(|error| error.to_string())?;
    let session = drill::replay(&made, &attempt.actions);
    let cured = drill::cure::judge(&made, &session).is_right();
    let case = Case { job: &made.job, fault: made.fault.id, session: &session, cured };
    let judged = score(&case, &Rubric::plain());
    let name = name_drill(&attempt.order);
    let class = drill::Row::new(file, &attempt.learner, &name, attempt.seal, &session, judged);
    Ok(Row { class, mode: attempt.order.mode })
}
