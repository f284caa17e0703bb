//! Which faults are found with the limit or the breaker tripped: weeks lived in houses that have each, and what the
//! technician finds then, written to `scenarios/diagnosis/trips.txt`.
//! `TANKWRIGHT_BLESS=1 cargo test --release -p tankwright-tests --test dealing -- --ignored trips`.

use std::fmt::Write as _;
use std::fs;

use bench::Mode;
use drill::{Order, Wanted};
use plant::Handle;
use plant::fault::FaultId;
use tankwright_tests::{cores, tree};

/// Weeks lived with each fault.
const WEEKS: u32 = 60;
/// Where the drawings begin: not where other tests draw theirs.
const FIRST: u32 = 70_000;

/// What stood tripped at the door in weeks with a fault.
#[derive(Clone, Copy, Default)]
struct Found {
    weeks: u32,
    limit: u32,
    breaker: u32,
}

fn lived(id: FaultId, seeds: impl Iterator<Item = u32>) -> Found {
    let mut found = Found::default();
    for seed in seeds {
        let order = Order { fault: Wanted::One(id), ..Order::chance(seed, Mode::Solo) };
        let Ok(drill) = drill::make(&order) else { continue };
        let plant = &drill.job.home.plant;
        let breaker = plant.panel.breakers.iter().any(|b| b.feeds_heater() && b.handle == Handle::Tripped);
        let limit = plant.limit.tripped || plant.lower_limit.is_some_and(|below| below.tripped);
        found.weeks += 1;
        found.limit += u32::from(limit);
        found.breaker += u32::from(breaker);
    }
    found
}

/// Every fault's weeks, on two cores.
fn all(seeds: impl Fn(usize) -> Vec<u32> + Sync) -> Vec<(FaultId, Found)> {
    let faults: Vec<(usize, FaultId)> = FaultId::ALL.iter().copied().enumerate().collect();
    cores::on_two(&faults, |(i, id)| (*id, lived(*id, seeds(*i).into_iter())))
}

#[test]
#[ignore = "lives thousands of weeks; run when the catalogue has changed"]
fn the_table_of_trips_is_fresh() {
    let mut text = String::from(
        "# fault, weeks lived with it, found with the limit tripped, with the breaker tripped\n",
    );
    for (id, found) in all(|_| (FIRST..FIRST + WEEKS).collect()) {
        let _ = writeln!(text, "{id} {} {} {}", found.weeks, found.limit, found.breaker);
    }
    let path = tree::root().join("scenarios/diagnosis/trips.txt");
    if std::env::var_os("TANKWRIGHT_BLESS").is_some() {
        fs::write(&path, &text).unwrap();
    }
    assert_eq!(fs::read_to_string(&path).unwrap_or_default(), text, "stale: see the head of this file");
}

/// A week of each: whatever is found tripped there is in the table.
#[test]
fn what_trips_in_a_lived_week_is_in_the_table() {
    let text = fs::read_to_string(tree::root().join("scenarios/diagnosis/trips.txt")).unwrap();
    let row = |id: FaultId| -> Vec<u32> {
        let name = id.to_string();
        let line = text.lines().find(|line| line.split(' ').next() == Some(name.as_str())).unwrap();
        line.split(' ').skip(1).map(|n| n.parse().unwrap()).collect()
    };
    for (id, found) in all(|i| vec![FIRST + WEEKS + i as u32]) {
        let row = row(id);
        assert!(found.limit == 0 || row[1] > 0, "{id} trips its limit");
        assert!(found.breaker == 0 || row[2] > 0, "{id} trips its breaker");
    }
}
