//! Two things wrong at once: each is looked for in the houses that have the other, by turns, until nothing fits better.

use plant::fault::{FaultCase, Remedy};

use crate::suspicion::{Evidence, Ring, Suspected, closest, guess, left};
use crate::visit::Visit;

/// Turns at most.
const TURNS: usize = 6;

/// Of each of the two, whom what was seen leaves beside the likeliest of the other; the likeliest first.
type Pair = [Vec<Suspected>; 2];

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

/// Where not both are sure, one is put right and everything looked at once more in the house in which it is.
pub fn looks_again(visit: &mut Visit, pair: Vec<Vec<Suspected>>) -> Vec<Vec<Suspected>> {
    let Ok(pair) = <Pair>::try_from(pair) else { return Vec::new() };
    if pair.iter().all(|of_one| is_sure(of_one)) {
        return pair.into();
    }
    let mended = pair[first(&pair)][0].case();
    visit.mends_first(&mended);
    let again = from(visit.ring(), visit.evidence(), &mended);
    let again = if again[0][0].differs == 0 { again } else { finer(visit.ring(), visit.evidence(), &again) };
    again.into()
}

/// Which of the two is put right first: what is sure, and of that what is there to be done.
fn first(pair: &Pair) -> usize {
    let is_work = |left: &[Suspected]| !matches!(left[0].remedy(), None | Some(Remedy::Advise(_)));
    let rank = |left: &[Suspected]| (is_sure(left), is_work(left));
    usize::from(rank(&pair[1]) > rank(&pair[0]))
}
