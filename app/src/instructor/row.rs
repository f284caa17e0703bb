//! One row of the class table: an attempt made, folded and judged again.

use bench::Mode;

/// What an attempt amounted to.
#[derive(Clone, PartialEq, Debug)]
pub struct Row {
    /// The row as the table and its file have it.
    pub class: drill::Row,
    /// How the drill was run.
    pub mode: Mode,
}
