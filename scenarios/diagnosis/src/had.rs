//! What every suspect would have shown at one step, an act at a time: whoever asks may do something else between.

use std::rc::Rc;
use std::vec::IntoIter;

use bench::{Entry, Job, Session, Shown};
use plant::fault::{FaultCase, FaultId};

use crate::Instead;
use crate::compare::reads_alike;
use crate::suspect::{Suspect, suspects, world_beside};

/// The suspects' houses on their way through the acts up to a step.
#[derive(Clone, Debug)]
pub struct HadItBeen {
    job: Job,
    beside: Option<FaultCase>,
    log: Vec<Rc<Entry>>,
    left: IntoIter<Suspect>,
    now: Option<Way>,
    found: Vec<Instead>,
}

/// One house on its way.
#[derive(Clone, Debug)]
struct Way {
    fault: FaultId,
    session: Session,
    done: usize,
    shown: Shown,
}

impl HadItBeen {
    /// Asks for a step of a log.
    pub fn new(job: &Job, truth: FaultId, beside: Option<&FaultCase>, log: &[Rc<Entry>], step: u32) -> Self {
        let log = match step as usize {
            0 => Vec::new(),
            step => log.get(..step).map(<[_]>::to_vec).unwrap_or_default(),
        };
        let mut left = suspects(&job.home);
        left.retain(|suspect| suspect.fault != truth && !log.is_empty());
        Self {
            job: job.clone(),
            beside: beside.cloned(),
            log,
            left: left.into_iter(),
            now: None,
            found: Vec::new(),
        }
    }

    /// Does one act in one suspect's house, or begins with the next house; false once there is none left.
    pub fn turn(&mut self) -> bool {
        let Some(mut way) = self.now.take() else {
            self.now = self.left.next().map(|suspect| Way {
                fault: suspect.fault,
                session: Session::begin(world_beside(&self.job, &suspect, self.beside.as_ref())),
                done: 0,
                shown: Shown::Done,
            });
            return self.now.is_some();
        };
        if let Some(entry) = self.log.get(way.done) {
            way.shown = way.session.step(&entry.action).shown;
            way.done += 1;
            self.now = Some(way);
        } else {
            self.note(way);
        }
        true
    }

    fn note(&mut self, way: Way) {
        let alike = self.log.last().is_some_and(|entry| reads_alike(&entry.outcome.shown, &way.shown));
        let instead = Instead { fault: way.fault, shown: way.shown, alike };
        match self.found.last_mut().filter(|last| last.fault == instead.fault) {
            Some(last) if alike && !last.alike => *last = instead,
            Some(_) => {}
            None => self.found.push(instead),
        }
    }

    /// What was found so far.
    pub fn found(&self) -> &[Instead] {
        &self.found
    }
}
