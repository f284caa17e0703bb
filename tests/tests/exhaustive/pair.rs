//! Two things wrong at once: each is looked for in the houses that have the other, by turns, until nothing fits better.

use plant::fault::{FaultCase, Remedy};

use crate::suspicion::{Evidence, Ring, Suspected, closest, guess, left};

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
pub fn from(ring: Ring, by: Evidence, one: &FaultCase) -> Pair {
    let beside = |case: &FaultCase| closest(Ring { beside: Some(case), ..ring }, by);
    let mut two = beside(one);
    for _ in 0..TURNS {
        let one = beside(&two[0].case());
        if two[0].differs == 0 {
            // Where all fits, those that nothing tells from either are known as well.
            return [one, two];
        }
        if one[0].differs >= two[0].differs {
            break;
        }
        two = one;
    }
    // Nothing fits to the last: everybody who comes close is tried finer.
    let all = |case: FaultCase| left(Ring { beside: Some(&case), ..ring }, by);
    let one = all(two[0].case());
    let two = all(one[0].case());
    [one, two]
}

/// The same has to be done for all that are left of one.
pub fn is_sure(left: &[Suspected]) -> bool {
    left.iter().all(|one| one.fault.is_silent() || one.same_repair(&left[0]))
}

/// Which of the two is put right first: what is sure, and of that what is there to be done.
pub fn first(pair: &Pair) -> usize {
    let is_work = |left: &[Suspected]| !matches!(left[0].remedy(), None | Some(Remedy::Advise(_)));
    let rank = |left: &[Suspected]| (is_sure(left), is_work(left));
    usize::from(rank(&pair[1]) > rank(&pair[0]))
}
