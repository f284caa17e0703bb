//! Wrong installations beside the fault: laid by the seed where an order asks for traps and for more than a plain fault.
//! They are there to be noticed and told.

use plant::fault::{FaultCase, FaultId};
use plant::home::Home;
use plant::{Handiwork, Level};
use quantity::Draw;

use crate::order::Order;
use crate::wish;

/// Share of such drills that have one. Invented: its absence is no surprise.
const SHARE: f64 = 0.5;

/// Faults that are told by what comes from the relief valve, or that count on it.
const AT_THE_RELIEF: &[FaultId] =
    &[FaultId::F45, FaultId::F46, FaultId::F47, FaultId::F48, FaultId::F49, FaultId::F70];

/// Faults that the limit ends, now and then or always, and those of the limit itself.
const AT_THE_LIMIT: &[FaultId] = &[
    FaultId::F05,
    FaultId::F06,
    FaultId::F07,
    FaultId::F08,
    FaultId::F09,
    FaultId::F13,
    FaultId::F14,
    FaultId::F15,
    FaultId::F30,
    FaultId::F32,
    FaultId::F48,
    FaultId::F61,
    FaultId::F68,
    FaultId::F70,
    FaultId::F71,
];

/// Faults that a breaker with little room ends, those of a rating, of a supply.
const AT_AN_ELEMENT: &[FaultId] =
    &[FaultId::F14, FaultId::F15, FaultId::F20, FaultId::F27, FaultId::F29, FaultId::F30, FaultId::F66];

/// Whether a fault still shows, and its house can still be worked in, with that beside it.
fn goes_with(handiwork: Handiwork, fault: FaultId) -> bool {
    let hidden = match handiwork {
        Handiwork::Capped | Handiwork::Seized => AT_THE_RELIEF,
        Handiwork::Bridged => AT_THE_LIMIT,
        Handiwork::OtherElement(_) => AT_AN_ELEMENT,
    };
    !hidden.contains(&fault)
}

/// Lays one of those that go with what is wrong, where the order asks for traps at a harder level.
pub(crate) fn lay(order: &Order, wrong: [Option<&FaultCase>; 2], home: &mut Home) {
    let harder = order.level.is_some_and(|level| level > wish::Level::Plain);
    let mut draw = Draw::new(u64::from(order.seed), "handiwork");
    if order.traps.is_empty() || !harder || !draw.chance(SHARE) {
        return;
    }
    let goes = |one: &Handiwork| wrong.into_iter().flatten().all(|case| goes_with(*one, case.id));
    // The upper or the lower element: one of four kinds, as likely as the others.
    let level = if draw.chance(SHARE) { Level::Upper } else { Level::Lower };
    let mut all =
        [Handiwork::Capped, Handiwork::Seized, Handiwork::Bridged, Handiwork::OtherElement(level)].to_vec();
    all.retain(|one| one.fits(home) && goes(one));
    if let Some(one) = all.get(draw.index(all.len().max(1))) {
        home.lay(*one);
    }
}

#[cfg(test)]
mod tests {
    use std::collections::BTreeMap;

    use bench::{Mode, Trap};

    use super::*;
    use crate::make::{make, settle};
    use crate::wish::Level as How;

    fn order(seed: u32, level: Option<How>, traps: &[Trap]) -> Order {
        Order { level, traps: traps.to_vec(), ..Order::chance(seed, Mode::Solo) }
    }

    /// What was laid: at the relief valve, at the limit, at an element.
    fn laid(order: &Order) -> [bool; 3] {
        let home = make(order).unwrap().job.home;
        let plant::Installation { bridged, other_element, .. } = home.installation;
        [home.plant.plumbing.relief.blocked, bridged, other_element.is_some()]
    }

    #[test]
    fn about_half_of_the_harder_drills_with_traps_have_one_and_no_others() {
        let traps = [Trap::BrokenLead];
        let mut kinds = [0; 3];
        for seed in 0..60 {
            assert_eq!(laid(&order(seed, Some(How::Plain), &traps)), [false; 3], "{seed}");
            assert_eq!(laid(&order(seed, Some(How::Hard), &[])), [false; 3], "{seed}");
            assert_eq!(laid(&order(seed, None, &traps)), [false; 3], "{seed}");
            let found = laid(&order(seed, Some(How::Hard), &traps));
            assert!(found.iter().filter(|one| **one).count() <= 1, "{seed}: one at most");
            kinds.iter_mut().zip(found).for_each(|(kind, there)| *kind += u32::from(there));
        }
        let all: u32 = kinds.iter().sum();
        // Sixty tosses of a coin: outside of 18 to 42 in one of five hundred such tests. Seeded, so the same each time.
        assert!((18..=42).contains(&all) && kinds.iter().all(|kind| *kind > 0), "{kinds:?}");
    }

    /// Whatever trips a limit in a lived week is kept from a bridged one.
    #[test]
    fn what_the_limit_ends_has_its_limit() {
        let lived = include_str!("../../diagnosis/trips.txt");
        let mut trips: BTreeMap<&str, bool> = BTreeMap::new();
        for line in lived.lines().filter(|line| line.starts_with('F')) {
            let columns: Vec<&str> = line.split_whitespace().collect();
            trips.insert(columns[0], columns[2] != "0");
        }
        for id in FaultId::ALL.iter().filter(|id| trips[id.name()]) {
            assert!(!goes_with(Handiwork::Bridged, *id), "{id}");
        }
    }

    /// What was wrong before is wrong beside it, and a fault keeps its numbers.
    #[test]
    fn the_fault_is_as_it_would_be_without() {
        for seed in 0..40 {
            let [with, without] = [&[Trap::BrokenLead][..], &[]].map(|t| order(seed, Some(How::Middling), t));
            assert_eq!(settle(&with).unwrap().fault, settle(&without).unwrap().fault);
            assert!(!make(&with).unwrap().job.home.inspect().is_empty(), "{seed}");
        }
    }
}
