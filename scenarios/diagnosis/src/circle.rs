//! The circle of suspects of one job, each at the door of the house in which it is the one.
//!
//! Many attempts at one job are judged against the same suspects: their houses are made once.

use std::cell::OnceCell;
use std::collections::BTreeSet;
use std::rc::Rc;

use bench::{Entry, Job, Session};
use plant::fault::{FaultCase, FaultId};

use crate::compare::reads_alike;
use crate::suspect::{suspects, world_beside};

/// The suspects of a job. Their houses are made when they are first asked for.
pub struct Circle {
    job: Job,
    /// What else is wrong in every one of their houses.
    beside: Option<FaultCase>,
    arrivals: OnceCell<Vec<(crate::Suspect, Session)>>,
}

impl Circle {
    /// Of a job.
    pub fn of(job: &Job) -> Self {
        Self::beside(job, None)
    }

    /// Of a job where another fault is there whoever is the one.
    pub fn beside(job: &Job, other: Option<&FaultCase>) -> Self {
        Self { job: job.clone(), beside: other.cloned(), arrivals: OnceCell::new() }
    }

    fn arrivals(&self) -> &[(crate::Suspect, Session)] {
        let arrive = |suspect: crate::Suspect| {
            let world = world_beside(&self.job, &suspect, self.beside.as_ref());
            (suspect, Session::begin(world))
        };
        self.arrivals.get_or_init(|| suspects(&self.job.home).into_iter().map(arrive).collect())
    }

    /// Faults that the named steps do not tell from what was seen. The true one is always among them.
    ///
    /// A suspect drops out at the first evidence step where none of its variants reads alike. Steps are numbered
    /// from 1; steps beyond the log are ignored. Words of the customer tell nothing here: the account belongs to
    /// the true week. One whose remedy is the true one's, the same part at the same place, is no other repair, and left
    /// out: an element open for good and one open while warm are both changed.
    pub fn alive(&self, truth: &FaultCase, log: &[Rc<Entry>], evidence: &[u32]) -> BTreeSet<FaultId> {
        let within = |s: &usize| (1..=log.len()).contains(s);
        let steps: BTreeSet<usize> = evidence.iter().map(|s| *s as usize).filter(within).collect();
        let mut alive = BTreeSet::from([truth.id]);
        let remedy = truth.id.remedy(&truth.parameters);
        for (suspect, arrival) in self.arrivals() {
            let same = || suspect.fault.remedy(&suspect.parameters) == remedy;
            if !alive.contains(&suspect.fault) && !same() && survives(arrival, log, &steps) {
                alive.insert(suspect.fault);
            }
        }
        alive
    }
}

/// Nothing is folded beyond the last step that is evidence, nor beyond the first that reads otherwise.
fn survives(arrival: &Session, log: &[Rc<Entry>], steps: &BTreeSet<usize>) -> bool {
    let Some(last) = steps.last().copied() else { return true };
    let mut session = arrival.clone();
    for (entry, step) in log.iter().zip(1..=last) {
        let outcome = session.step(&entry.action);
        if steps.contains(&step) && !reads_alike(&entry.outcome.shown, &outcome.shown) {
            return false;
        }
    }
    true
}
