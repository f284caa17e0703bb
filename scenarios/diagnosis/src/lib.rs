//! Suspects and evidence, judged by worlds: what a suspect fault would have shown is the same fold of the same
//! acts, run in the same house with that fault in place of the true one.

pub mod atlas;
mod circle;
mod compare;
pub mod course;
mod had;
mod recovery;
mod rounds;
mod suspect;
mod walk;

pub use circle::Circle;
pub use compare::reads_alike;
pub use had::HadItBeen;
pub use rounds::{COVERS, Round};
pub use suspect::{Suspect, suspects, trips_breaker, trips_limit, world, world_beside};
pub use walk::{Telling, Walk};

use std::collections::BTreeSet;
use std::rc::Rc;

use bench::{Entry, Job, Shown};
use plant::fault::{FaultCase, FaultId};

/// What one suspect would have shown at a step.
#[derive(Clone, PartialEq, Debug)]
pub struct Instead {
    /// The suspect.
    pub fault: FaultId,
    /// What the same act would have shown.
    pub shown: Shown,
    /// Too close to the true reading for these instruments to tell.
    pub alike: bool,
}

/// Faults that the named steps do not tell from what was seen: [`Circle::alive`] for one job alone.
pub fn alive(job: &Job, truth: &FaultCase, log: &[Rc<Entry>], evidence: &[u32]) -> BTreeSet<FaultId> {
    Circle::of(job).alive(truth, log, evidence)
}

/// What every suspect would have shown at one step, the true fault left out. Of a fault's variants the one
/// that comes closest to the true reading stands for it. A second fault of the house stays where it is.
pub fn had_it_been(
    job: &Job,
    truth: FaultId,
    beside: Option<&FaultCase>,
    log: &[Rc<Entry>],
    step: u32,
) -> Vec<Instead> {
    let mut asked = HadItBeen::new(job, truth, beside, log, step);
    while asked.turn() {}
    asked.found().to_vec()
}
