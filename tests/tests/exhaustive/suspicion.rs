//! Whom a thorough technician suspects: every fault that can be in the house, with its numbers on a ladder, each in
//! the house in which it is the one, folded until it has shown too much that was not seen.

use std::cmp::{Ordering, Reverse};
use std::collections::BinaryHeap;
use std::ops::{Range, RangeInclusive};

use bench::{Action, Display, Job, Session, Shown, Sight};
use diagnosis::{Suspect, reads_alike, world_beside};
use drill::Drill;
use plant::fault::{FaultCase, FaultId, Parameter, Parameters, Remedy};
use plant::home::Home;
use plant::{BURNT_OFF, End};
use quantity::{Temperature, det};

/// Rungs of a number on a scale, as shares of its range.
const RUNGS: [f64; 3] = [0.05, 0.5, 0.95];
/// The same where it is the only number: near its ends it may act only at the edge of what is done.
const RUNGS_OF_ONE: [f64; 5] = [0.02, 0.25, 0.5, 0.75, 0.98];
/// Steps by which the numbers of the likeliest are tried finer.
const FINER: [f64; 4] = [0.1, 0.05, 0.025, 0.0125];

/// Faults that grow worse with every heating, and by how much in a week at most: resistance of the joint, times.
const WORSENS: &[FaultId] = &[FaultId::F20, FaultId::F25, FaultId::F71];
/// Of these the ones whose every beginning goes through all the others.
const FROM_ANYWHERE: &[FaultId] = &[FaultId::F20, FaultId::F25];
const WORST: f64 = 16.0;
/// How bad it may have become by now, as shares of that on a logarithmic scale; at last it burns off.
const BY_NOW: [f64; 5] = [0.0, 0.3, 0.6, 0.9, 1.0];

/// What was seen that no sound house shows, before anybody guesses what may be behind it.
const ENOUGH: usize = 12;

/// So many of those that come close are tried finer.
const MOST_TRIED: usize = 12;

/// Half of what lies between two marks of a dial, in °F, and what a dial on another mark counts for.
const HALF_A_MARK: f64 = 5.0;
const PLAIN: usize = 5;
/// What a coil may have, in ohms, and from which share on it is another.
const COIL: RangeInclusive<f64> = 5.0..=100.0;
const ANOTHER_COIL: f64 = 0.1;
/// What counts for what cannot change.
const CERTAIN: usize = 50;

/// An act of the visit and what it showed.
pub type Seen = (Action, Shown);

/// What a visit showed, and where in it the same was tried again and again.
#[derive(Clone, Copy)]
pub struct Evidence<'a> {
    pub seen: &'a [Seen],
    pub tried: &'a [Range<usize>],
    /// What was seen before is lived through and counts for nothing.
    pub from: usize,
}

/// Among whom one is looked for: the house, what a sound one like it is, what else is known to be wrong in it.
#[derive(Clone, Copy)]
pub struct Ring<'a> {
    pub job: &'a Job,
    pub sound: &'a Home,
    pub beside: Option<&'a FaultCase>,
    /// What the ohmmeter found of each coil, over what its stamp asks for.
    pub coils: [Option<f64>; 2],
}

/// A suspect at work: how far its house has been walked, and how often it showed something else.
#[derive(Clone)]
pub struct Suspected {
    pub fault: FaultId,
    pub parameters: Parameters,
    /// Its numbers as shares of their ranges; of what grows worse, how bad it is by now.
    shares: Vec<f64>,
    house: Session,
    walked: usize,
    pub differs: usize,
    /// What came of what is tried again and again, so far.
    tries: Vec<Shown>,
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
    fn at(ring: Ring, fault: FaultId, shares: Vec<f64>) -> Self {
        let Ring { job, beside, .. } = ring;
        let numbers = fault.fault().parameters.iter().zip(&shares);
        let mut parameters: Parameters = numbers.map(|(p, s)| (p.name.to_owned(), at(p, *s))).collect();
        plant::fault::place_in(&mut parameters, &job.home);
        let suspect = Suspect { fault, parameters: parameters.clone() };
        let mut job = world_beside(job, &suspect, beside);
        if let Some(by_now) = shares.get(fault.fault().parameters.len()) {
            grow_worse(&mut job.home, *by_now);
        }
        let house = Session::begin(job);
        Self { fault, parameters, shares, house, walked: 0, differs: 0, tries: Vec::new() }
    }

    /// As a case.
    pub fn case(&self) -> FaultCase {
        FaultCase { id: self.fault, parameters: self.parameters.clone() }
    }

    /// What has to be done for it.
    pub fn remedy(&self) -> Option<Remedy> {
        self.fault.remedy(&self.parameters)
    }

    /// The same has to be done for both.
    pub fn same_repair(&self, other: &Self) -> bool {
        self.fault.same_repair(other.fault) || self.remedy() == other.remedy()
    }

    /// The same fault, and the same has to be done.
    fn is_like(&self, other: &Self) -> bool {
        self.fault == other.fault && self.remedy() == other.remedy()
    }

    /// What has to be done for it is what the drill asks for; whether it was done to the right one of two, the cure tells.
    pub fn repairs(&self, truth: &FaultCase) -> bool {
        self.fault.same_repair(truth.id) || self.remedy() == truth.id.remedy(&truth.parameters)
    }

    /// How much its house, with these numbers, shows otherwise of all that was seen.
    pub fn differs_in_all(&self, ring: Ring, by: Evidence) -> usize {
        let mut again = Self::at(ring, self.fault, self.shares.clone());
        again.walk(by, usize::MAX);
        again.differs
    }

    /// Walks on until more than so many acts have shown something else; whether the end was reached.
    fn walk(&mut self, by: Evidence, most: usize) -> bool {
        while self.differs <= most {
            let at = self.walked;
            let Some((act, shown)) = by.seen.get(at) else { return true };
            self.walked += 1;
            let there = self.house.step(act).shown;
            self.house.log.clear();
            if at < by.from {
                continue;
            }
            let Some(tried) = by.tried.iter().find(|tried| tried.contains(&at)) else {
                self.differs += differences(shown, &there);
                continue;
            };
            self.tries.push(there);
            if self.walked == tried.end {
                let tries = std::mem::take(&mut self.tries);
                let here: Vec<&Shown> = by.seen[tried.clone()].iter().map(|(_, shown)| shown).collect();
                self.differs +=
                    if same_now_and_then(&here, &tries.iter().collect::<Vec<_>>()) { 0 } else { CERTAIN };
            }
        }
        false
    }
}

/// Each thing that comes here comes there now and then, and the other way round.
fn same_now_and_then(here: &[&Shown], there: &[&Shown]) -> bool {
    let all_come = |these: &[&Shown], those: &[&Shown]| {
        these.iter().all(|one| those.iter().any(|other| reads_alike(one, other)))
    };
    all_come(here, there) && all_come(there, here)
}

impl Suspected {
    /// The same fault with the numbers of its neighbourhood that fit best.
    fn finer(self, ring: Ring, by: Evidence) -> Self {
        let parameters = self.fault.fault().parameters;
        let whole = |i: &usize| parameters.get(*i).is_some_and(|p| p.whole);
        let scales: Vec<usize> = (0..self.shares.len()).filter(|i| !whole(i)).collect();
        let mut here = self;
        for (step, i) in FINER.iter().flat_map(|step| scales.iter().map(move |i| (step, *i))) {
            for sign in [-1.0, 1.0] {
                if here.differs == 0 {
                    return here;
                }
                let mut shares = here.shares.clone();
                shares[i] = (shares[i] + sign * step).clamp(0.0, 1.0);
                let mut there = Self::at(ring, here.fault, shares);
                if there.walk(by, here.differs - 1) {
                    here = there;
                }
            }
        }
        here
    }
}

/// Its charred joints, so much worse than at first.
fn grow_worse(home: &mut Home, by_now: f64) {
    let wiring = &mut home.plant.wiring;
    for end in End::all() {
        if wiring.joint(end).charred {
            let joint = wiring.joint_mut(end);
            let times = det::exp(by_now * det::ln(WORST));
            joint.resistance = if by_now < 1.0 { joint.resistance * times } else { BURNT_OFF };
        }
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
        // A coil has the ohms it has, whatever was drawn and heated before.
        (
            Shown::Meter { display: Display::Ohms { ohms: a } },
            Shown::Meter { display: Display::Ohms { ohms: b } },
        ) if are_other_coils(a.get(), b.get()) => PLAIN,
        (
            Shown::Sights { sights: a, .. } | Shown::DoneWith { sights: a },
            Shown::Sights { sights: b, .. } | Shown::DoneWith { sights: b },
        ) => {
            let missing = |a: &[Sight], b: &[Sight]| -> usize {
                a.iter().filter(|sight| !b.contains(sight)).map(weight).sum()
            };
            missing(a, b).max(missing(b, a)).max(1)
        }
        _ => 1,
    }
}

fn are_other_coils(a: f64, b: f64) -> bool {
    COIL.contains(&a) && COIL.contains(&b) && (a - b).abs() > ANOTHER_COIL * a
}

/// What a sight that is not there counts for: of what a cable is made no hour and no draw makes anything else.
const fn weight(sight: &Sight) -> usize {
    match sight {
        Sight::Cable { .. } => CERTAIN,
        // A joint weeps at every hour.
        Sight::Wet { .. } => PLAIN,
        _ => 1,
    }
}

/// Every fault that can be in the house, over all its cases and rungs: those that people call for, or the others.
fn ladder(ring: Ring, silent: bool) -> Vec<Suspected> {
    let mut all = Vec::new();
    // Two that one repair serves are one thing wrong.
    let other = |id: &FaultId| ring.beside.is_none_or(|case| case.id != *id && !case.id.same_repair(*id));
    let can_be = |id: &FaultId| id.is_silent() == silent && (id.fault().fits)(ring.sound) && other(id);
    for id in FaultId::ALL.iter().copied().filter(can_be) {
        let parameters = id.fault().parameters;
        let worsens = WORSENS.contains(&id);
        let values = |p: &Parameter| -> Vec<f64> {
            let cases = (p.high - p.low) as usize + 1;
            if p.whole {
                (0..cases).map(|i| (i as f64 + 0.5) / cases as f64).collect()
            } else if FROM_ANYWHERE.contains(&id) {
                vec![0.5]
            } else if parameters.iter().filter(|p| !p.whole).count() == 1 {
                RUNGS_OF_ONE.to_vec()
            } else {
                RUNGS.to_vec()
            }
        };
        let by_now = worsens.then(|| BY_NOW.to_vec());
        let mut tuples = vec![Vec::new()];
        for values in parameters.iter().map(values).chain(by_now) {
            let longer =
                |t: &Vec<f64>| values.iter().map(|v| t.iter().copied().chain([*v]).collect()).collect();
            tuples = tuples.iter().flat_map(|t| -> Vec<Vec<f64>> { longer(t) }).collect();
        }
        if id == FaultId::F15 {
            tuples.extend(as_measured(ring.coils, parameters));
        }
        let mut met: Vec<(Parameters, Option<f64>)> = Vec::new();
        for shares in tuples {
            let by_now = shares.get(parameters.len()).copied();
            let one = Suspected::at(ring, id, shares);
            // A heater of one element has one case of what another has two.
            if !met.contains(&(one.parameters.clone(), by_now)) {
                met.push((one.parameters.clone(), by_now));
                all.push(one);
            }
        }
    }
    all
}

/// Turns that touch, so many as the ohmmeter says: when a breaker trips hangs on every one of them.
fn as_measured(coils: [Option<f64>; 2], parameters: &[Parameter]) -> Vec<Vec<f64>> {
    let Some(of) = parameters.iter().find(|p| !p.whole) else { return Vec::new() };
    let share = |coil: f64| (coil - of.low) / (of.high - of.low);
    let levels = coils.into_iter().zip([0.25, 0.75]);
    let within = |share: &f64| (0.0..=1.0).contains(share);
    levels.filter_map(|(coil, level)| Some(vec![level, coil.map(share).filter(within)?])).collect()
}

/// The suspects whose houses would have shown the same, or the least else, the likeliest first. What nobody calls for is thought of where
/// nothing that somebody calls for fits.
pub fn left(ring: Ring, by: Evidence) -> Vec<Suspected> {
    let mut left: Vec<Suspected> = Vec::new();
    for silent in [false, true] {
        let mut race = Race::of(ladder(ring, silent));
        let mut tried = 0;
        while tried < MOST_TRIED {
            let least = left.first().map(|one| one.differs);
            let Some(one) = race.next(by, least.map_or(usize::MAX, close)) else { break };
            // Nothing has to be told apart that has the same done to it.
            let told = left.first().is_some_and(|best| best.same_repair(&one));
            tried += usize::from(!told);
            let one = if told { one } else { one.finer(ring, by) };
            match one.differs.cmp(&least.unwrap_or(usize::MAX)) {
                Ordering::Less => left = vec![one],
                Ordering::Equal => left.push(one),
                Ordering::Greater => {}
            }
        }
        if left.first().is_some_and(|best| best.differs == 0) {
            break;
        }
    }
    left.sort_by(|a, b| rank(a).partial_cmp(&rank(b)).unwrap());
    left
}

/// The one whose house comes closest, and where it shows all that was seen, everybody else whose house does so too.
pub fn closest(ring: Ring, by: Evidence) -> Vec<Suspected> {
    let mut race = Race::of(ladder(ring, false));
    let Some(first) = race.next(by, usize::MAX) else { return Vec::new() };
    let first = first.finer(ring, by);
    let is_exact = first.differs == 0;
    let mut close = vec![first];
    while let Some(one) = race.next(by, 0).filter(|_| is_exact) {
        close.push(one);
    }
    close.sort_by(|a, b| rank(a).partial_cmp(&rank(b)).unwrap());
    close
}

/// So many who come closest alone, however far that is.
pub fn nearest(ring: Ring, by: Evidence, many: usize) -> Vec<Suspected> {
    let mut race = Race::of(ladder(ring, false));
    std::iter::from_fn(|| race.next(by, usize::MAX)).take(many).collect()
}

/// Where two things are wrong, one of them by what was seen first: so much of it as one suspect explains better than
/// all others.
pub fn guess(ring: Ring, by: Evidence) -> Option<Suspected> {
    let mut enough = ENOUGH;
    loop {
        let seen = &by.seen[..strange(ring, by, enough)];
        let begun = Evidence { seen, ..by };
        let mut race = Race::of(ladder(ring, false));
        let first = race.next(begun, usize::MAX)?;
        if seen.len() == by.seen.len() || race.next(begun, first.differs).is_none() {
            return Some(first.finer(ring, begun));
        }
        enough *= 2;
    }
}

/// How long it takes until so much was seen that a sound house would not have shown.
fn strange(ring: Ring, by: Evidence, enough: usize) -> usize {
    let mut job = ring.job.clone();
    job.home.make_sound();
    let mut house = Session::begin(job);
    let mut differs = 0;
    for (i, (act, shown)) in by.seen.iter().enumerate() {
        differs += differences(shown, &house.step(act).shown);
        if differs >= enough {
            return i + 1;
        }
    }
    by.seen.len()
}

/// Of what nothing tells apart the commonest is meant; what nobody calls for comes last.
fn rank(s: &Suspected) -> (bool, f64) {
    (s.fault.is_silent(), -s.fault.fault().weight.get())
}

/// How much may differ in a house whose numbers, tried finer, may turn out better than one with so many.
const fn close(least: usize) -> usize {
    if least == 0 { 0 } else { 2 * least + 4 }
}

/// Suspects on their walks. Whose house has shown the least that was not seen walks on: nobody walks further than the
/// answer asks for.
struct Race {
    all: Vec<Suspected>,
    next: BinaryHeap<(Reverse<usize>, usize, Reverse<usize>)>,
    /// Who has come to the end.
    through: Vec<usize>,
}

impl Race {
    fn of(all: Vec<Suspected>) -> Self {
        let next = (0..all.len()).map(|i| (Reverse(0), 0, Reverse(i))).collect();
        Self { all, next, through: Vec::new() }
    }

    /// Who comes to the end next with no more shown otherwise than so much. Of a fault's numbers that ask for one repair
    /// the best stand for all.
    fn next(&mut self, by: Evidence, most: usize) -> Option<Suspected> {
        while let Some((Reverse(differs), _, Reverse(i))) = self.next.pop().filter(|next| next.0.0 <= most) {
            let one = &self.all[i];
            if self.through.iter().any(|done| self.all[*done].is_like(one)) {
                continue;
            }
            let one = &mut self.all[i];
            if one.walk(by, differs) {
                self.through.push(i);
                return Some(one.clone());
            }
            self.next.push((Reverse(one.differs), one.walked, Reverse(i)));
        }
        None
    }
}

/// What would have been shown otherwise had the truth been put into the house as it stands: for a message.
pub fn why(job: &Job, seen: &[Seen], truth: &Drill) -> String {
    let suspect = Suspect { fault: truth.fault.id, parameters: truth.fault.parameters.clone() };
    let mut house = Session::begin(world_beside(job, &suspect, truth.second.as_ref()));
    let mut told = String::new();
    for (i, (act, shown)) in seen.iter().enumerate() {
        let there = house.step(act).shown;
        if !reads_alike(shown, &there) {
            told += &format!("\n   {i} {act:?}: seen {shown:?}, there {there:?}");
        }
    }
    told
}
