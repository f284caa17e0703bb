//! The books of water and heat after any list of acts, at any heater, with anything wrong in the house.

use std::collections::BTreeSet;

use plant::climate::Climate;
use plant::fault::{FaultId, Parameters};
use quantity::Draw;

use super::fold::{KINDS, act, pick};
use super::*;

/// Acts in a list.
const ACTS: usize = 60;
/// Faults in a house.
const FAULTS: usize = 3;
/// Acts of [`act`] that move water or heat: breakers, dials, valves, taps, buckets, stops, hose and drain, relief lever,
/// waits, the household's use, gauge, parts changed, the whole heater changed.
const WATER: [usize; 16] = [10, 29, 31, 32, 32, 33, 34, 35, 35, 36, 37, 37, 38, 43, 46, 47];

/// Any heater in any house, with faults beside each other, leaks, gaskets, relief valves and expansion among them.
fn house(seed: u64) -> (Home, Vec<FaultId>) {
    let mut draw = Draw::new(seed, "books");
    let mut home = Home::sound(Setting {
        heater: HeaterModel::ALL[seed as usize % HeaterModel::ALL.len()],
        household: pick(&mut draw, HouseholdKind::ALL),
        climate: pick(&mut draw, Climate::ALL),
        day: 1 + draw.index(365) as u16,
        in_line: None,
        location: Default::default(),
    });
    let mut wrong = Vec::new();
    while wrong.len() < FAULTS {
        let fault = pick(&mut draw, FaultId::ALL).fault();
        if (fault.fits)(&home) && !wrong.contains(&fault.id) {
            let numbers = fault.complete(&Parameters::new(), &mut draw).unwrap();
            (fault.apply)(&numbers, &mut home);
            wrong.push(fault.id);
        }
    }
    (home, wrong)
}

fn held(home: &Home) -> [f64; 2] {
    let (tank, cold) = (&home.plant.tank, &home.plant.plumbing.cold_side);
    [tank.mass() + cold.mass.get(), tank.energy() + cold.heat.get()]
}

fn booked(home: &Home) -> [f64; 2] {
    let ledger = &home.plant.plumbing.ledger;
    [ledger.net_mass().get(), ledger.net_heat().get()]
}

/// Folds the lists; mass is held to a gram and heat to 0.01 % of what was in the house, after every act.
fn books_close(seeds: std::ops::Range<u64>) {
    let (mut grams, mut share, mut done, mut refused) = (0.0_f64, 0.0_f64, 0_usize, 0_usize);
    let (mut heaters, mut faults) = (BTreeSet::new(), BTreeSet::new());
    let lists = seeds.end - seeds.start;
    for seed in seeds {
        let (home, wrong) = house(seed);
        heaters.insert(home.setting.heater);
        faults.extend(wrong.iter().copied());
        let mode = if seed % 2 == 0 { Mode::Coached } else { Mode::Solo };
        let (held_first, booked_first) = (held(&home), booked(&home));
        let mut session = Session::begin(job(home, mode, &[]));
        let mut draw = Draw::new(seed, "books' acts");
        for step in 0..ACTS {
            let kind = if draw.chance(0.7) { pick(&mut draw, &WATER) } else { draw.index(KINDS) };
            let action = act(kind, &mut draw);
            let outcome = session.step(&action);
            done += 1;
            refused += usize::from(matches!(outcome.shown, Shown::Refused { .. }));
            let (now, told) = (held(&session.home), booked(&session.home));
            let [mass, heat] = [0, 1].map(|i| ((now[i] - held_first[i]) - (told[i] - booked_first[i])).abs());
            let part = heat / held_first[1].max(2e7);
            let place = || format!("list {seed} {wrong:?}, act {step} {action:?}");
            assert!(mass < 1e-3, "{}: {mass} kg", place());
            assert!(part < 1e-4, "{}: {heat} J, {part}", place());
            (grams, share) = (grams.max(mass * 1e3), share.max(part));
        }
    }
    println!(
        "{lists} lists of {ACTS} acts ({refused} of {done} refused), {} heaters, {} faults: worst {grams:.2e} g, {:.2e} %",
        heaters.len(),
        faults.len(),
        share * 100.0
    );
}

#[test]
fn books_close_over_acts_at_the_bench() {
    books_close(0..40);
}

/// `TANKWRIGHT_SEEDS=0..300` for some of them.
#[test]
#[ignore = "ten thousand lists take minutes; docs/figures.md keeps what they came to"]
fn books_close_over_ten_thousand_lists_of_acts() {
    let asked = std::env::var("TANKWRIGHT_SEEDS").unwrap_or_else(|_| "0..10000".to_owned());
    let (from, to) = asked.split_once("..").expect("as 0..300");
    books_close(from.parse().expect("a number")..to.parse().expect("a number"));
}
