//! Suspects and evidence, judged by worlds: what a suspect fault would have shown is the same fold of the same
//! acts, run in the same house with that fault in place of the true one.

pub mod atlas;
mod compare;
mod rounds;
mod suspect;
mod walk;

pub use compare::reads_alike;
pub use rounds::Round;
pub use suspect::{Suspect, suspects, world};
pub use walk::{Telling, Walk};

use std::collections::BTreeSet;
use std::rc::Rc;

use bench::{Action, Entry, Job, Session, Shown};
use plant::fault::FaultId;

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

/// Faults that the named steps do not tell from what was seen. The true one is always among them.
///
/// A suspect drops out at the first evidence step where none of its variants reads alike. Steps are numbered
/// from 1; steps beyond the log are ignored. Words of the customer tell nothing here: the account belongs to
/// the true week.
pub fn alive(job: &Job, truth: FaultId, log: &[Rc<Entry>], evidence: &[u32]) -> BTreeSet<FaultId> {
    let steps: BTreeSet<usize> = evidence.iter().map(|s| *s as usize).filter(|s| *s >= 1).collect();
    let last = steps.iter().copied().filter(|s| *s <= log.len()).max().unwrap_or(0);
    let mut alive = BTreeSet::from([truth]);
    for suspect in suspects(&job.home) {
        if !alive.contains(&suspect.fault) && survives(job, &suspect, log, &steps, last) {
            alive.insert(suspect.fault);
        }
    }
    alive
}

fn survives(job: &Job, suspect: &Suspect, log: &[Rc<Entry>], steps: &BTreeSet<usize>, last: usize) -> bool {
    let mut session = Session::begin(world(job, suspect));
    for (entry, step) in log.iter().zip(1..=last) {
        let outcome = session.step(&entry.action);
        if steps.contains(&step) && !reads_alike(&entry.outcome.shown, &outcome.shown) {
            return false;
        }
    }
    true
}

/// What every suspect would have shown at one step, the true fault left out. Of a fault's variants the one
/// that comes closest to the true reading stands for it.
pub fn had_it_been(job: &Job, truth: FaultId, log: &[Rc<Entry>], step: u32) -> Vec<Instead> {
    let Some(entry) = (step as usize).checked_sub(1).and_then(|i| log.get(i)) else { return Vec::new() };
    let acts: Vec<&Action> = log.iter().take(step as usize).map(|e| &e.action).collect();
    let mut all: Vec<Instead> = Vec::new();
    for suspect in suspects(&job.home).into_iter().filter(|s| s.fault != truth) {
        let mut session = Session::begin(world(job, &suspect));
        let mut shown = Shown::Done;
        acts.iter().for_each(|act| shown = session.step(act).shown);
        let alike = reads_alike(&entry.outcome.shown, &shown);
        let instead = Instead { fault: suspect.fault, shown, alike };
        match all.last_mut().filter(|last| last.fault == instead.fault) {
            Some(last) if alike && !last.alike => *last = instead,
            Some(_) => {}
            None => all.push(instead),
        }
    }
    all
}
