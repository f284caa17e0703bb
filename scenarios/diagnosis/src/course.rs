//! How a fault comes on: the same house walked with it early, well on and gone, and the acts that tell those apart.

use bench::{Action, Display, Job, Shown};
use plant::fault::{FaultId, Stage};
use plant::household::Life;
use quantity::sort::sort_by_key;

use crate::atlas::{Atlas, numbers, walked_with};
use crate::compare::{reads_alike, seems_unchanged};
use crate::suspect::Suspect;
use crate::walk::{Telling, Walk};

/// One fault in one house, at each of its stages.
#[derive(Clone, PartialEq, Debug)]
pub struct Course {
    fault: FaultId,
    stages: Vec<(Stage, Walk)>,
}

/// One act that tells the first stage from the last.
#[derive(Clone, PartialEq, Debug)]
pub struct Sign {
    /// The act.
    pub act: Action,
    /// The last wait or draw before it in its round.
    pub after: Option<Action>,
    /// What it shows in the sound house.
    pub sound: Shown,
    /// What it shows at each stage.
    pub shown: Vec<(Stage, Shown)>,
}

impl Course {
    /// Nothing walked yet.
    pub const fn of(fault: FaultId) -> Self {
        Self { fault, stages: Vec::new() }
    }

    /// Walks one stage more, with the numbers it has in the atlas but for what tells the stage. Whether there was one.
    pub fn walk(&mut self, job: &Job, life: Life, seed: u64) -> bool {
        let all = self.fault.fault().stages.all();
        let Some(&stage) = all.get(self.stages.len()) else { return false };
        let drawn = self.fault.fault().at(stage, &mut numbers(self.fault, seed));
        drawn.is_some_and(|parameters| {
            let suspect = Suspect { fault: self.fault, parameters };
            self.stages.push((stage, walked_with(job, suspect, life, seed).1));
            true
        })
    }

    /// The acts that tell its last stage from its first and from sound: figures that move one way from sound onwards, then
    /// what is only looked at; of each kind first what tells most steps; each act once. A figure that turns back is chance.
    pub fn signs(&self, atlas: &Atlas) -> Vec<Sign> {
        let (Some((_, first)), Some((_, last))) = (self.stages.first(), self.stages.last()) else {
            return Vec::new();
        };
        let sign = |t: Telling<'_>| {
            let at = |walk: &Walk| walk.shown_by(t.act, t.round, t.step).cloned();
            let shown = self.stages.iter().map(|(stage, walk)| Some((*stage, at(walk)?)));
            let (sound, shown) = (at(atlas.sound())?, shown.collect::<Option<_>>()?);
            Some(Sign { act: t.act.clone(), after: t.after.cloned(), sound, shown })
        };
        let mut signs: Vec<Sign> = first.grown_to(last).filter_map(sign).filter(Sign::leads).collect();
        sort_by_key(&mut signs, |sign| (sign.is_looked_at(), std::cmp::Reverse(sign.steps())));
        let mut once: Vec<Sign> = Vec::new();
        for sign in signs {
            if once.iter().all(|one| one.act != sign.act) {
                once.push(sign);
            }
        }
        once
    }
}

impl Sign {
    /// From sound to the last stage.
    fn all(&self) -> impl Iterator<Item = &Shown> {
        std::iter::once(&self.sound).chain(self.shown.iter().map(|(_, shown)| shown))
    }

    /// How many steps it tells from the one before.
    fn steps(&self) -> usize {
        self.all().zip(self.all().skip(1)).filter(|(before, then)| !seems_unchanged(before, then)).count()
    }

    /// No stage of it is a figure.
    fn is_looked_at(&self) -> bool {
        self.all().all(|shown| figures(shown).iter().all(|figure| figure.is_nan()))
    }

    /// It leads away from sound, and a figure of it never back. Whether an element is heard is how the day happened to be.
    fn leads(&self) -> bool {
        if matches!(self.act, Action::Listen { .. }) {
            return false;
        }
        let away = self.shown.last().is_some_and(|(_, last)| !reads_alike(&self.sound, last));
        let one_way = |which: usize| {
            let course = || self.all().map(|shown| figures(shown)[which]);
            let pairs = || course().zip(course().skip(1));
            pairs().all(|(a, b)| a < b) || pairs().all(|(a, b)| a > b)
        };
        away && (self.is_looked_at() || (0..FIGURES).any(one_way))
    }
}

/// Flow that a bucket and a watch tell, m³/s: a tenth of a gallon a minute. Common practice, no source.
const TIMED: f64 = 6.3e-6;
/// Figures of a bucket: at first, at the end, how fast.
const FIGURES: usize = 3;

/// What a reading says in figures; not a number where it says none.
fn figures(shown: &Shown) -> [f64; FIGURES] {
    let one = |figure: f64| [figure, f64::NAN, f64::NAN];
    match shown {
        Shown::Meter { display } => one(match display {
            Display::Volts { volts } => volts.get(),
            Display::Ohms { ohms } | Display::Insulation { ohms } => ohms.get(),
            Display::Amps { amps } => amps.get(),
            Display::Over => f64::INFINITY,
            _ => f64::NAN,
        }),
        Shown::Clamp { amps } => one(amps.get()),
        Shown::Temperature { reading } => one(reading.get()),
        Shown::Pressure { now, .. } => one(now.get()),
        Shown::Bucket(bucket) => [bucket.first.get(), bucket.last.get(), (bucket.flow.get() / TIMED).round()],
        _ => one(f64::NAN),
    }
}
