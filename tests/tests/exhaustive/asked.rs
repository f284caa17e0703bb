//! Drills that chance does not deal: faults by name that one look names, a second fault, traps and somebody's handiwork.
//! The same technician works them.

use std::ops::Range;

use bench::Trap;
use drill::{Level, Order, Second, Wanted};
use plant::fault::FaultId;
use quantity::Draw;

use crate::{all_solved, order};

/// What is dealt only where it is asked for.
fn by_name() -> Vec<FaultId> {
    FaultId::ALL.iter().copied().filter(|id| drill::wish::given_away(*id)).collect()
}

/// So many orders by seeds, of those that can be dealt.
fn dealt(asked: impl Fn(u32) -> Order, skipped: usize, count: usize) -> Vec<Order> {
    (0..).map(asked).filter(|order| drill::settle(order).is_ok()).skip(skipped).take(count).collect()
}

/// A fault by its name.
fn of(fault: FaultId, range: &Range<usize>) -> Vec<Order> {
    dealt(|seed| Order { fault: Wanted::One(fault), ..order(seed) }, range.start, range.len())
}

/// A second fault: any, and now and then what the first leads to.
fn two(range: &Range<usize>) -> Vec<Order> {
    let second = |seed| if seed % 3 == 0 { Second::Follows } else { Second::Any };
    dealt(|seed| Order { second: Some(second(seed)), ..order(seed) }, range.start, range.len())
}

/// Traps by the seed, one at least, at every level in turn.
fn with_traps(range: &Range<usize>) -> Vec<Order> {
    let asked = |seed: u32| {
        let mut draw = Draw::new(u64::from(seed), "traps asked for");
        let first = draw.index(Trap::ALL.len());
        let chosen = |(i, trap): (usize, &Trap)| (i == first || draw.chance(0.25)).then_some(*trap);
        let traps = Trap::ALL.iter().enumerate().filter_map(chosen).collect();
        let levels = [None, Some(Level::Plain), Some(Level::Middling), Some(Level::Hard)];
        // Licences go by fours as well: the levels take turns with each of them.
        let level = levels[(seed / 4) as usize % levels.len()];
        Order { traps, level, ..order(seed) }
    };
    dealt(asked, range.start, range.len())
}

#[test]
fn some_asked_for_by_name_are_solved() {
    all_solved(by_name().into_iter().flat_map(|fault| of(fault, &(0..2))));
}

#[test]
fn some_with_traps_are_solved() {
    all_solved(with_traps(&(0..10)));
}

/// As many as fit a minute or so of one core.
#[test]
fn some_with_a_second_fault_are_solved() {
    all_solved(two(&(0..12)));
}

/// The recorded runs, in `docs/figures.md`: `TANKWRIGHT_ASKED=names`, `second` or `traps`, with
/// `TANKWRIGHT_SEEDS=0..200` so many of them, `cargo test --release -p tankwright-tests --test exhaustive -- --ignored
/// --nocapture asked`.
#[test]
#[ignore = "hundreds of drills"]
fn what_is_asked_for_is_solved() {
    let asked = std::env::var("TANKWRIGHT_SEEDS").unwrap_or_default();
    let ends: Vec<usize> = asked.split("..").filter_map(|n| n.parse().ok()).collect();
    let range = if let [from, to] = ends[..] { from..to } else { 0..200 };
    match std::env::var("TANKWRIGHT_ASKED").as_deref() {
        Ok("second") => all_solved(two(&range)),
        Ok("traps") => all_solved(with_traps(&range)),
        _ => all_solved(by_name().into_iter().flat_map(|fault| of(fault, &range))),
    }
}
