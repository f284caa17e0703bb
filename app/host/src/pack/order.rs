//! An order of functions in which each shares much of its code with those shortly before it.

use std::collections::{BTreeMap, VecDeque};

/// How many bytes in a row count as something shared.
const RUN: usize = 6;

/// How far back a compressor sees, in bytes; a little less than gzip's 32 kB.
const REACH: usize = 30_000;

/// A run that more functions than this have is found nearby anyway.
const COMMON: usize = 80;

/// Bytes added to a function's length before what it shares is divided by it: without them the tiniest go first.
const HANDICAP: f64 = 150.0;

/// The order: a permutation of the functions' numbers, beginning with the longest.
pub fn alike(bodies: &[&[u8]]) -> Vec<usize> {
    let runs = shared_runs(bodies);
    let mut holders = vec![Vec::new(); runs.iter().flatten().max().map_or(0, |last| last + 1)];
    for (at, of_one) in runs.iter().enumerate() {
        of_one.iter().for_each(|&run| holders[run].push(at));
    }
    let mut near = vec![0_usize; holders.len()];
    let mut shared = vec![0_usize; bodies.len()];
    let mut left: Vec<bool> = vec![true; bodies.len()];
    let (mut window, mut reach) = (VecDeque::new(), 0);
    let mut order = Vec::with_capacity(bodies.len());
    while let Some(next) = best(bodies, &shared, &left) {
        left[next] = false;
        order.push(next);
        window.push_back(next);
        reach += bodies[next].len();
        for &run in &runs[next] {
            near[run] += 1;
            if near[run] == 1 {
                holders[run].iter().for_each(|&at| shared[at] += 1);
            }
        }
        while reach > REACH && window.len() > 1 {
            let Some(gone) = window.pop_front() else { break };
            reach -= bodies[gone].len();
            for &run in &runs[gone] {
                near[run] -= 1;
                if near[run] == 0 {
                    holders[run].iter().for_each(|&at| shared[at] -= 1);
                }
            }
        }
    }
    order
}

/// The function still left that shares most with what is in reach for its length; the longest when none does.
fn best(bodies: &[&[u8]], shared: &[usize], left: &[bool]) -> Option<usize> {
    let worth = |at: usize| (shared[at] as f64 / (bodies[at].len() as f64 + HANDICAP), bodies[at].len());
    let of_those_left = (0..bodies.len()).filter(|&at| left[at]);
    of_those_left.reduce(|best, at| if worth(at) > worth(best) { at } else { best })
}

/// For each function the runs of bytes that some, but not too many, of the others have too, numbered.
fn shared_runs(bodies: &[&[u8]]) -> Vec<Vec<usize>> {
    let runs_of = |body: &[u8]| {
        let mut runs: Vec<u64> =
            body.windows(RUN).map(|run| run.iter().fold(0, |all, &b| all << 8 | u64::from(b))).collect();
        runs.sort_unstable();
        runs.dedup();
        runs
    };
    let all: Vec<Vec<u64>> = bodies.iter().map(|body| runs_of(body)).collect();
    let mut count = BTreeMap::new();
    all.iter().flatten().for_each(|&run| *count.entry(run).or_insert(0_usize) += 1);
    count.retain(|_, holders| (2..=COMMON).contains(holders));
    let numbers: BTreeMap<u64, usize> = count.into_keys().zip(0..).collect();
    all.into_iter().map(|runs| runs.iter().filter_map(|run| numbers.get(run).copied()).collect()).collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn those_that_share_code_stand_together_and_none_is_lost() {
        let of =
            |seed: u8| -> Vec<u8> { (0..200_u32).map(|i| ((i * i * u32::from(seed)) >> 3) as u8).collect() };
        let bodies: Vec<Vec<u8>> = [3, 5, 7, 3, 5, 7].map(of).into();
        let order = alike(&bodies.iter().map(Vec::as_slice).collect::<Vec<_>>());
        let mut sorted = order.clone();
        sorted.sort_unstable();
        assert_eq!(sorted, [0, 1, 2, 3, 4, 5]);
        for pair in order.chunks(2) {
            assert_eq!(bodies[pair[0]], bodies[pair[1]], "{order:?}");
        }
    }
}
