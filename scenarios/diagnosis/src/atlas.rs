//! The fault atlas: each fault beside a sound house, by every act of every round; which faults look most like it,
//! and the act that tells them apart. Nothing here is written down, all of it is walked.

use std::collections::BTreeMap;

use bench::{Action, Job, Shown};
use plant::fault::{FaultId, Parameters};
use plant::household::{self, Life};
use quantity::Draw;
use quantity::sort::sort_by_key;

use crate::rounds::Round;
use crate::suspect::{Suspect, world};
use crate::walk::{Telling, Walk};

/// How many faults that look most like one are named.
const TWINS: usize = 4;

/// One house, sound and with each fault that fits it.
#[derive(Clone, PartialEq, Debug)]
pub struct Atlas {
    sound: Walk,
    faults: Vec<(Suspect, Walk)>,
}

/// One act beside a sound house.
#[derive(Clone, PartialEq, Debug)]
pub struct Row {
    /// The round it belongs to.
    pub round: Round,
    /// The act.
    pub act: Action,
    /// The last wait or draw before it in its round.
    pub after: Option<Action>,
    /// What it shows in the sound house.
    pub sound: Shown,
    /// What it shows with the fault.
    pub faulty: Shown,
    /// How many other faults it tells this one from.
    pub tells: usize,
}

/// A fault that looks much alike.
#[derive(Clone, PartialEq, Debug)]
pub struct Twin {
    /// Which.
    pub fault: FaultId,
    /// How many acts tell the two apart; a contact tried again and again counts once.
    pub acts: usize,
    /// The act that tells most from each other, with what it shows here and there; `None` if none does.
    pub by: Option<(Action, Shown, Shown)>,
}

/// One page.
#[derive(Clone, PartialEq, Debug)]
pub struct Page {
    /// What differs from a sound house, the most telling first.
    pub rows: Vec<Row>,
    /// The faults most like it, the likest first.
    pub twins: Vec<Twin>,
}

/// A day lived on: the same draws whatever is wrong.
fn lived(mut job: Job, life: Life, seed: u64) -> Job {
    let life = Life { patience: u16::MAX, ..life.hands_off() };
    household::week(&mut job.home, life, &mut Draw::new(seed, "a day"), 1);
    job
}

/// The stream of a fault's numbers.
pub(crate) fn numbers(fault: FaultId, seed: u64) -> Draw {
    Draw::new(seed, &format!("atlas {fault}"))
}

/// The house with this fault in it, its day lived and walked.
pub(crate) fn walked_with(job: &Job, mut suspect: Suspect, life: Life, seed: u64) -> (Suspect, Walk) {
    let mut sound = job.home.clone();
    sound.make_sound();
    plant::fault::place_in(&mut suspect.parameters, &sound);
    let walk = Walk::through(lived(world(job, &suspect), life, seed));
    (suspect, walk)
}

impl Atlas {
    /// Begins with the sound house of a job.
    pub fn begin(job: &Job, life: Life, seed: u64) -> Self {
        let mut sound = job.clone();
        sound.home.make_sound();
        Self { sound: Walk::through(lived(sound, life, seed)), faults: Vec::new() }
    }

    /// Walks the house with one more fault in it. Does nothing where it does not fit or is there already.
    pub fn add(&mut self, job: &Job, fault: FaultId, life: Life, seed: u64) {
        let mut sound = job.home.clone();
        sound.make_sound();
        if !(fault.fault().fits)(&sound) || self.faults.iter().any(|(one, _)| one.fault == fault) {
            return;
        }
        if let Ok(parameters) = fault.fault().complete(&Parameters::new(), &mut numbers(fault, seed)) {
            self.faults.push(walked_with(job, Suspect { fault, parameters }, life, seed));
        }
    }

    /// The faults walked so far, each with its numbers and its walk.
    pub fn walks(&self) -> &[(Suspect, Walk)] {
        &self.faults
    }

    /// The sound house.
    pub const fn sound(&self) -> &Walk {
        &self.sound
    }

    /// The page of one of them.
    pub fn page(&self, fault: FaultId) -> Option<Page> {
        let (_, here) = self.faults.iter().find(|(one, _)| one.fault == fault)?;
        let others = || self.faults.iter().filter(move |(one, _)| one.fault != fault);
        let mut tells: BTreeMap<(Round, usize), usize> = BTreeMap::new();
        for (_, there) in others() {
            here.told_from(there).for_each(|t| *tells.entry((t.round, t.step)).or_default() += 1);
        }
        let telling = |t: &Telling<'_>| tells.get(&(t.round, t.step)).copied().unwrap_or(0);
        let mut rows: Vec<Row> = here
            .told_from(&self.sound)
            .map(|t| Row {
                round: t.round,
                act: t.act.clone(),
                after: t.after.cloned(),
                sound: t.there.clone(),
                faulty: t.here.clone(),
                tells: telling(&t),
            })
            .collect();
        sort_by_key(&mut rows, |row| std::cmp::Reverse(row.tells));
        let mut twins: Vec<Twin> = others()
            .map(|(one, there)| Twin {
                fault: one.fault,
                acts: here.acts_that_tell(there),
                by: here
                    .told_from(there)
                    .max_by_key(|t| (telling(t), std::cmp::Reverse((t.round, t.step))))
                    .map(|t| (t.act.clone(), t.here.clone(), t.there.clone())),
            })
            .collect();
        sort_by_key(&mut twins, |twin| twin.acts);
        twins.truncate(TWINS);
        Some(Page { rows, twins })
    }
}
