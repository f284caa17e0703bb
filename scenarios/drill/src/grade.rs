//! From an attempt to its score, with the houses of drills already made kept at hand: thousands of attempts
//! of one class share a few drills.

use std::rc::Rc;

use bench::Session;
use diagnosis::Circle;

use crate::attempt::Attempt;
use crate::class::Row;
use crate::debrief::Findings;
use crate::make::{Drill, make};
use crate::order::{Order, OrderError};
use crate::replay::{circles, judge_among, replay};
use crate::rubric::Rubric;
use crate::score::Score;

/// Most drills kept; a class has fewer.
const KEPT: usize = 64;

/// Grades attempts one after the other.
#[derive(Default)]
pub struct Grader {
    drills: Vec<(String, Kept)>,
}

/// A drill with its suspects.
#[derive(Clone)]
struct Kept {
    drill: Rc<Drill>,
    circles: Rc<[Circle]>,
}

/// One attempt, replayed and judged.
pub struct Graded {
    /// Its drill.
    pub drill: Rc<Drill>,
    /// Its end.
    pub session: Session,
    /// Its score.
    pub score: Score,
}

impl Grader {
    /// Nothing kept yet.
    pub fn new() -> Self {
        Self::default()
    }

    /// The drill of an order, made once.
    pub fn drill(&mut self, order: &Order) -> Result<Rc<Drill>, OrderError> {
        self.kept(order).map(|kept| kept.drill)
    }

    fn kept(&mut self, order: &Order) -> Result<Kept, OrderError> {
        let key = order.write();
        if let Some((_, kept)) = self.drills.iter().find(|(one, _)| *one == key) {
            return Ok(kept.clone());
        }
        let drill = Rc::new(make(order)?);
        let kept = Kept { circles: circles(&drill).into(), drill };
        if self.drills.len() >= KEPT {
            self.drills.remove(0);
        }
        self.drills.push((key, kept.clone()));
        Ok(kept)
    }

    /// Replays and judges an attempt.
    pub fn grade(&mut self, attempt: &Attempt, rubric: &Rubric) -> Result<Graded, OrderError> {
        let Kept { drill, circles } = self.kept(&attempt.order)?;
        let session = replay(&drill, &attempt.actions);
        let score = judge_among(&drill, &circles, &session, rubric);
        Ok(Graded { drill, session, score })
    }

    /// What folding and judging an attempt finds for its debrief, and its drill.
    pub fn findings(
        &mut self,
        attempt: &Attempt,
        rubric: &Rubric,
    ) -> Result<(Rc<Drill>, Findings), OrderError> {
        let Kept { drill, circles } = self.kept(&attempt.order)?;
        let found = Findings::of(&drill, &circles, &attempt.actions, rubric);
        Ok((drill, found))
    }

    /// The same as a row of the class table.
    pub fn row(&mut self, file: &str, attempt: &Attempt, rubric: &Rubric) -> Result<Row, OrderError> {
        let graded = self.grade(attempt, rubric)?;
        let name = crate::code::encode(&attempt.order)
            .unwrap_or_else(|_| format!("{} seed {}", graded.drill.fault.id, attempt.order.seed));
        Ok(Row::new(file, attempt, &name, &graded.session, graded.score))
    }
}
