//! Folding an attempt: the one way to a session, a score, a proof.

use bench::{Action, Session};
use diagnosis::Circle;

use crate::cure;
use crate::make::Drill;
use crate::rubric::Rubric;
use crate::score::{Case, Score, Truth, score};

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
    judge_among(drill, &circles(drill), session, rubric)
}

/// The circle of suspects of everything that is wrong; in each house of one stands the other fault.
pub fn circles(drill: &Drill) -> Vec<Circle> {
    drill.each_beside().map(|(_, other)| Circle::beside(&drill.job, other)).collect()
}

/// The same with the circles of the drill's suspects at hand.
pub fn judge_among(drill: &Drill, circles: &[Circle], session: &Session, rubric: &Rubric) -> Score {
    let cured = cure::judge(drill, session).is_right();
    let truths: Vec<Truth<'_>> =
        drill.wrong().zip(circles).map(|(case, circle)| Truth { case, circle }).collect();
    score(&Case { job: &drill.job, truths: &truths, session, cured }, rubric)
}

/// An attempt's replay as bytes, for proofs that two machines agree: every step with all that came of it, the
/// house as it was left, the score.
pub fn trace(session: &Session, score: &Score) -> Vec<u8> {
    let mut bytes = Vec::new();
    for entry in &session.log {
        bytes.extend(serde_json::to_vec(entry).unwrap_or_default());
        bytes.push(b'\n');
    }
    bytes.extend(serde_json::to_vec(&session.home).unwrap_or_default());
    bytes.push(b'\n');
    bytes.extend(serde_json::to_vec(score).unwrap_or_default());
    bytes.push(b'\n');
    bytes
}
