//! The one door: an act on a session gives the next session and what it showed.

use quantity::Seconds;

use crate::action::Action;
use crate::session::{Job, Session};
use crate::shown::{Outcome, Refusal, Shown};

impl Session {
    /// A job at the moment the technician rings.
    pub fn begin(job: Job) -> Self {
        let home = job.home.clone();
        let began = (home.plant.outlet(), home.plant.plumbing.pressure);
        Self {
            me: crate::session::Technician::arriving(&job),
            job: std::rc::Rc::new(job),
            home,
            access: Default::default(),
            clock: Seconds(0.0),
            log: Vec::new(),
            ended: None,
            happenings: Vec::new(),
            began,
        }
    }
}

/// Does one act. Pure, deterministic and total: every act in every state answers with a reading, a change,
/// a reason why not, or a harm.
pub fn reduce(session: &Session, action: &Action) -> (Session, Outcome) {
    let _ = action;
    let outcome = Outcome {
        took: Seconds(0.0),
        shown: Shown::Refused { why: Refusal::NotHere },
        harms: Vec::new(),
        noticed: Vec::new(),
        facts: Vec::new(),
    };
    (session.clone(), outcome)
}
