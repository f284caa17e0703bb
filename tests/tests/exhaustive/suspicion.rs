//! Whom a thorough technician suspects: every fault that can be in the house, with its numbers on a ladder, each in
//! the house in which it is the one, folded until it has shown too much that was not seen.

use std::rc::Rc;

use bench::{Action, Job, Session, Shown, Sight};
use diagnosis::{Suspect, reads_alike, world};
use drill::Drill;
use plant::fault::{FaultCase, FaultId, Parameter, Parameters};
use plant::home::Home;
use quantity::Temperature;

/// Rungs of a number on a scale, as shares of its range.
const RUNGS: &[f64] = &[0.15, 0.5, 0.85];
/// The same where a fault has more than one such number.
const FEW: &[f64] = &[0.15, 0.5, 0.85];
/// Steps by which the numbers of the likeliest are tried finer.
const FINER: [f64; 4] = [0.1, 0.05, 0.025, 0.0125];

/// Half of what lies between two marks of a dial, in °F, and what a dial on another mark counts for.
const HALF_A_MARK: f64 = 5.0;
const PLAIN: usize = 5;

/// An act of the visit and what it showed.
pub type Seen = (Action, Shown);

/// A suspect at work: how far its house has been walked, and how often it showed something else.
#[derive(Clone)]
pub struct Suspected {
    pub fault: FaultId,
    pub parameters: Parameters,
    /// Its numbers as shares of their ranges.
    shares: Vec<f64>,
    house: Session,
    walked: usize,
    pub differs: usize,
}

/// A number at a share of its range.
fn at(p: &Parameter, share: f64) -> f64 {
    if p.whole {
        (p.low + (share * (p.high - p.low + 1.0)).floor()).min(p.high)
    } else if p.logarithmic {
        p.low * (share * (p.high / p.low).ln()).exp()
    } else {
        p.low + share * (p.high - p.low)
    }
}

impl Suspected {
    fn at(job: &Job, fault: FaultId, shares: Vec<f64>) -> Self {
        let numbers = fault.fault().parameters.iter().zip(&shares);
        let mut parameters: Parameters = numbers.map(|(p, s)| (p.name.to_owned(), at(p, *s))).collect();
        plant::fault::place_in(&mut parameters, &job.home);
        let suspect = Suspect { fault, parameters: parameters.clone() };
        let mut house = Session::begin(world(job, &suspect));
        // Nothing is asked of the log of a suspect's house.
        house.log = Vec::new();
        Self { fault, parameters, shares, house, walked: 0, differs: 0 }
    }

    /// The same has to be done for both.
    pub fn same_repair(&self, other: &Self) -> bool {
        self.fault.same_repair(other.fault)
            || self.fault.remedy(&self.parameters) == other.fault.remedy(&other.parameters)
    }

    /// What has to be done for it is what the drill asks for.
    pub fn repairs(&self, drill: &Drill) -> bool {
        let truth = &drill.fault;
        self.fault.same_repair(truth.id)
            || self.fault.remedy(&self.parameters) == truth.id.remedy(&truth.parameters)
    }

    /// Walks on until more than so many acts have shown something else; whether the end was reached.
    fn walk(&mut self, seen: &[Seen], most: usize) -> bool {
        while self.differs <= most {
            let Some((act, shown)) = seen.get(self.walked) else { return true };
            self.walked += 1;
            let there = self.house.step(act).shown;
            self.house.log.clear();
            self.differs += differences(shown, &there);
        }
        false
    }
}

/// How much two things shown differ: sights one by one, anything else as one.
fn differences(here: &Shown, there: &Shown) -> usize {
    if reads_alike(here, there) {
        return 0;
    }
    match (here, there) {
        // Between the marks of a dial nobody reads; a dial on another mark is plain to see.
        (Shown::Dials { upper: a, lower: b }, Shown::Dials { upper: c, lower: d }) => {
            let apart = |a: &Temperature, b: &Temperature| a.above(*b).to_fahrenheit().abs() > HALF_A_MARK;
            PLAIN * (usize::from(apart(a, c)) + usize::from(apart(b, d)))
        }
        (
            Shown::Sights { sights: a, .. } | Shown::DoneWith { sights: a },
            Shown::Sights { sights: b, .. } | Shown::DoneWith { sights: b },
        ) => {
            let missing = |a: &[Sight], b: &[Sight]| a.iter().filter(|sight| !b.contains(sight)).count();
            missing(a, b).max(missing(b, a)).max(1)
        }
        _ => 1,
    }
}

/// Every fault that can be in the house, over all its cases and rungs.
fn ladder(job: &Job, sound: &Home) -> Vec<Suspected> {
    let mut all = Vec::new();
    for id in FaultId::ALL.iter().copied().filter(|id| (id.fault().fits)(sound)) {
        let parameters = id.fault().parameters;
        let scales = parameters.iter().filter(|p| !p.whole).count();
        let rungs = if scales > 1 { FEW } else { RUNGS };
        let mut tuples = vec![Vec::new()];
        for p in parameters {
            let cases = (p.high - p.low) as usize + 1;
            let values: Vec<f64> = if p.whole {
                (0..cases).map(|i| (i as f64 + 0.5) / cases as f64).collect()
            } else {
                rungs.to_vec()
            };
            tuples = tuples
                .into_iter()
                .flat_map(|t: Vec<f64>| {
                    values.iter().map(move |v| t.iter().copied().chain([*v]).collect::<Vec<f64>>())
                })
                .collect();
        }
        let mut met: Vec<Parameters> = Vec::new();
        for shares in tuples {
            let one = Suspected::at(job, id, shares);
            // A heater of one element has one case of what another has two.
            if !met.contains(&one.parameters) {
                met.push(one.parameters.clone());
                all.push(one);
            }
        }
    }
    all
}

/// The suspects whose houses would have shown the same, or the least else.
pub fn left(job: &Rc<Job>, sound: &Home, seen: &[Seen]) -> Vec<Suspected> {
    let mut all = ladder(job, sound);
    let mut most = 0;
    loop {
        let through: Vec<usize> = (0..all.len()).filter(|i| all[*i].walk(seen, most)).collect();
        if !through.is_empty() {
            let least = through.iter().map(|i| all[*i].differs).min().unwrap();
            let best: Vec<Suspected> =
                through.iter().map(|i| &all[*i]).filter(|s| s.differs == least).cloned().collect();
            return if least == 0 { best } else { finer(job, &all, seen, best) };
        }
        most = if most == 0 { 1 } else { 2 * most };
    }
}

/// The numbers of those that came close tried finer.
fn finer(job: &Job, all: &[Suspected], seen: &[Seen], best: Vec<Suspected>) -> Vec<Suspected> {
    let least = best[0].differs;
    let mut left = best;
    let mut starts: Vec<Suspected> =
        all.iter().filter(|s| s.walked == seen.len() && s.differs <= 2 * least + 4).cloned().collect();
    starts.sort_by_key(|s| s.differs);
    starts.truncate(8);
    for start in starts {
        let mut here = start;
        for step in FINER {
            for i in 0..here.shares.len() {
                if here.fault.fault().parameters[i].whole {
                    continue;
                }
                for sign in [-1.0, 1.0] {
                    let mut shares = here.shares.clone();
                    shares[i] = (shares[i] + sign * step).clamp(0.0, 1.0);
                    let mut there = Suspected::at(job, here.fault, shares);
                    if there.walk(seen, here.differs) && there.differs < here.differs {
                        here = there;
                    }
                }
            }
        }
        match here.differs.cmp(&left[0].differs) {
            std::cmp::Ordering::Less => left = vec![here],
            std::cmp::Ordering::Equal => left.push(here),
            std::cmp::Ordering::Greater => {}
        }
        if left[0].differs == 0 {
            break;
        }
    }
    left
}

/// What would have been shown otherwise had the truth been put into the house as it stands: for a message.
pub fn why(job: &Job, seen: &[Seen], truth: &FaultCase) -> String {
    let suspect = Suspect { fault: truth.id, parameters: truth.parameters.clone() };
    let mut house = Session::begin(world(job, &suspect));
    let mut told = String::new();
    for (i, (act, shown)) in seen.iter().enumerate() {
        let there = house.step(act).shown;
        if !reads_alike(shown, &there) {
            told += &format!("\n   {i} {act:?}: seen {shown:?}, there {there:?}");
        }
    }
    told
}
