//! Two things wrong at once: each is looked for in the houses that have the other, by turns, until nothing fits better.

use std::cmp::Reverse;

use plant::fault::{FaultCase, Remedy};

use crate::suspicion::{Evidence, Ring, Suspected, closest, guess, left, nearest};
use crate::visit::Visit;

/// Turns at most.
const TURNS: usize = 6;

/// Of each of the two, whom what was seen leaves beside the likeliest of the other; the likeliest first.
pub type Pair = [Vec<Suspected>; 2];

/// Others begun with where a first guess leads to no pair that fits.
const BEGINNINGS: usize = 8;

/// The pair, with nothing known.
pub fn pair(ring: Ring, by: Evidence) -> Pair {
    let one = guess(ring, by).unwrap();
    let mut best = from(ring, by, &one.case());
    if least(&best) > 0 {
        best = finer(ring, by, &best);
    }
    if least(&best) > 0 {
        for other in nearest(ring, by, BEGINNINGS) {
            let pair = from(ring, by, &other.case());
            if least(&pair) < least(&best) {
                best = pair;
            }
            if least(&best) == 0 {
                break;
            }
        }
    }
    best
}

/// How much a pair leaves unexplained: the last looked for is weighed beside the other as it was known then.
fn least(pair: &Pair) -> usize {
    pair[0][0].differs.min(pair[1][0].differs)
}

/// The pair, with a guess at one of them.
fn from(ring: Ring, by: Evidence, one: &FaultCase) -> Pair {
    let beside = |case: &FaultCase| closest(Ring { beside: Some(case), ..ring }, by);
    let mut two = beside(one);
    let mut one = beside(&two[0].case());
    for _ in 0..TURNS {
        // Where all fits, those that nothing tells from either are known as well.
        if two[0].differs == 0 || one[0].differs >= two[0].differs {
            break;
        }
        two = one;
        one = beside(&two[0].case());
    }
    [one, two]
}

/// The same where nothing fits to the last: everybody who comes close is tried finer.
fn finer(ring: Ring, by: Evidence, pair: &Pair) -> Pair {
    let all = |case: FaultCase| left(Ring { beside: Some(&case), ..ring }, by);
    let one = all(pair[1][0].case());
    let two = all(one[0].case());
    // Found finer, the second may leave others in the first one's place.
    if two[0].differs < one[0].differs {
        return [all(two[0].case()), two];
    }
    [one, two]
}

/// What was seen fits to the last, and the same has to be done for all that are left of one.
fn is_sure(left: &[Suspected]) -> bool {
    left[0].differs == 0 && left.iter().all(|one| one.fault.is_silent() || one.same_repair(&left[0]))
}

/// Where not both are sure, one is put right and everything looked at once more in the house in which it is. Which one, if
/// any.
pub fn mends_one(visit: &mut Visit, pair: &[Vec<Suspected>]) -> Option<Suspected> {
    if pair.iter().all(|of_one| is_sure(of_one)) {
        return None;
    }
    let surer = pair[first(pair)][0].clone();
    visit.mends_first(&surer.case());
    Some(surer)
}

/// The pair once one of them was put right.
pub fn with_one_mended(visit: &Visit, surer: &Suspected) -> Pair {
    let mended = surer.case();
    let again = from(visit.ring(), visit.evidence(), &mended);
    let again = if again[0][0].differs == 0 { again } else { finer(visit.ring(), visit.evidence(), &again) };
    if again[0][0].differs == 0 {
        return again;
    }
    // What does not fit may be the numbers of the one that is gone: only what was seen since tells of the other.
    let ring = Ring { beside: Some(&mended), ..visit.ring() };
    let other = left(ring, visit.evidence_since());
    if other.first().is_some_and(|one| one.differs == 0) {
        [vec![surer.clone()], by_all(ring, visit.evidence(), other)]
    } else {
        again
    }
}

/// Of those that fit to the last since one was mended, whose houses come closest to all that was seen before.
fn by_all(ring: Ring, by: Evidence, others: Vec<Suspected>) -> Vec<Suspected> {
    let weighed: Vec<(usize, Suspected)> =
        others.into_iter().map(|one| (one.differs_in_all(ring, by), one)).collect();
    let least = weighed.iter().map(|(differs, _)| *differs).min();
    weighed.into_iter().filter(|(differs, _)| Some(*differs) == least).map(|(_, one)| one).collect()
}

/// Repairs that are still to be told apart.
fn repairs(left: &[Suspected]) -> usize {
    left.iter()
        .enumerate()
        .filter(|(at, one)| !left[..*at].iter().any(|other| other.same_repair(one)))
        .count()
}

/// Which of the two is put right first: what is sure, of that what is there to be done, and where neither is sure the one
/// that leaves less to choose from.
fn first(pair: &[Vec<Suspected>]) -> usize {
    let is_work = |left: &[Suspected]| !matches!(left[0].remedy(), None | Some(Remedy::Advise(_)));
    let rank = |left: &[Suspected]| (is_sure(left), is_work(left), Reverse(repairs(left)));
    usize::from(rank(&pair[1]) > rank(&pair[0]))
}
