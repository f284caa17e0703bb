//! Two things wrong at once: each is looked for in the houses that have the other, by turns, until nothing fits better.

use plant::fault::{FaultCase, Remedy};

use crate::suspicion::{Evidence, Ring, Suspected, closest, guess, left};
use crate::visit::Visit;

/// Turns at most.
const TURNS: usize = 6;

/// Of each of the two, whom what was seen leaves beside the likeliest of the other; the likeliest first.
pub type Pair = [Vec<Suspected>; 2];

/// The pair, with nothing known.
pub fn pair(ring: Ring, by: Evidence) -> Pair {
    let one = guess(ring, by).unwrap();
    from(ring, by, &one.case())
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
    let other = left(Ring { beside: Some(&mended), ..visit.ring() }, visit.evidence_since());
    if other.first().is_some_and(|one| one.differs == 0) { [vec![surer.clone()], other] } else { again }
}

/// Which of the two is put right first: what is sure, and of that what is there to be done.
fn first(pair: &[Vec<Suspected>]) -> usize {
    let is_work = |left: &[Suspected]| !matches!(left[0].remedy(), None | Some(Remedy::Advise(_)));
    let rank = |left: &[Suspected]| (is_sure(left), is_work(left));
    usize::from(rank(&pair[1]) > rank(&pair[0]))
}
