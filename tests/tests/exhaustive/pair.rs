//! Two things wrong at once: each is looked for in the houses that have the other, by turns, until nothing fits better.

use plant::fault::FaultCase;

use crate::suspicion::{Evidence, Ring, Suspected, left};

/// Turns at most.
const TURNS: usize = 6;

/// Of each of the two, whom what was seen leaves beside the likeliest of the other; the likeliest first.
pub fn pair(ring: Ring, by: Evidence) -> [Vec<Suspected>; 2] {
    let beside = |case: Option<FaultCase>| left(Ring { beside: case.as_ref(), ..ring }, by);
    let likeliest = |left: &[Suspected]| left.first().map(Suspected::case);
    let mut one = beside(None);
    let mut two = beside(likeliest(&one));
    for _ in 0..TURNS {
        let better = beside(likeliest(&two));
        let fits_better = better[0].differs < two[0].differs;
        let exact = two[0].differs == 0;
        if !fits_better && !exact {
            break;
        }
        // Where all fits, that was the other's turn: those that nothing tells from it are known as well.
        (one, two) = if exact { (better, two) } else { (two, better) };
        if exact {
            break;
        }
    }
    [one, two]
}
