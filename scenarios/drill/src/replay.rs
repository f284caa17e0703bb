//! Folding an attempt: the one way to a session, a score, a proof.

use bench::{Action, Session};

use crate::cure;
use crate::make::Drill;
use crate::rubric::Rubric;
use crate::score::{Case, Score, score};

/// The session a list of acts leads to.
pub fn replay(drill: &Drill, actions: &[Action]) -> Session {
    Session::replay(drill.job.clone(), actions)
}

/// The same with every state on the way: the first is the arrival, then one after each act.
pub fn states(drill: &Drill, actions: &[Action]) -> Vec<Session> {
    let mut all = vec![Session::begin(drill.job.clone())];
    for action in actions {
        let Some(last) = all.last() else { break };
        let next = bench::reduce(last, action).0;
        all.push(next);
    }
    all
}

/// Judges a folded attempt under a rubric.
pub fn judge(drill: &Drill, session: &Session, rubric: &Rubric) -> Score {
    let cured = cure::judge(drill, session).is_right();
    score(&Case { job: &drill.job, fault: drill.fault.id, session, cured }, rubric)
}
