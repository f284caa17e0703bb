//! What the reasoning core says of each fault before anybody works on it, written to `scenarios/drill/alike.json`:
//! which faults look most like it, and how many acts tell it from the nearest that asks for another repair.
//! `TANKWRIGHT_BLESS=1 cargo test -p tankwright-tests --test dealing -- --ignored`.

use std::fmt::Write as _;
use std::fs;

use bench::Mode;
use diagnosis::Walk;
use diagnosis::atlas::Atlas;
use drill::{Drill, Order, Wanted};
use plant::HeaterModel;
use plant::fault::FaultId;
use tankwright_tests::tree;

use crate::first_look::given_away;

/// The drawing that is compared.
const SEED: u32 = 5000;
/// Drills of a fault whose first look is taken.
const LOOKS: u32 = 3;
/// Faults named as looking like one.
const TWINS: usize = 5;

fn house(heater: HeaterModel, base: FaultId) -> Option<Drill> {
    let chance = Order::chance(SEED, Mode::Solo);
    drill::make(&Order { heater: Some(heater), fault: Wanted::One(base), ..chance }).ok()
}

/// In every one of some drills the first look names it.
fn named_at_first_look(fault: FaultId) -> bool {
    let order = |seed| Order { fault: Wanted::One(fault), ..Order::chance(seed, Mode::Solo) };
    (SEED..SEED + LOOKS).all(|seed| given_away(&drill::make(&order(seed)).unwrap()).is_some())
}

fn walked(drill: &Drill) -> Atlas {
    let seed = u64::from(SEED);
    let mut atlas = Atlas::begin(&drill.job, drill.week.life, seed);
    FaultId::ALL.iter().for_each(|id| atlas.add(&drill.job, *id, drill.week.life, seed));
    atlas
}

/// One fault among the others of its house.
struct Row {
    fault: FaultId,
    alike: Vec<FaultId>,
    /// Acts that tell it from the likest that asks for another repair.
    acts: usize,
}

fn row(fault: FaultId, here: &Walk, atlas: &Atlas) -> Row {
    let mut others: Vec<(FaultId, usize)> = atlas
        .walks()
        .iter()
        .filter(|(one, _)| one.fault != fault)
        .map(|(one, there)| (one.fault, here.acts_that_tell(there)))
        .collect();
    others.sort_by_key(|(_, acts)| *acts);
    let acts = others.iter().find(|(id, _)| !fault.same_repair(*id)).map_or(0, |(_, acts)| *acts);
    let alike = others.into_iter().take(TWINS).map(|(id, _)| id).collect();
    Row { fault, alike, acts }
}

#[test]
#[ignore = "walks every heater; run when the catalogue has changed"]
fn the_table_is_fresh() {
    let mut atlases: Vec<(HeaterModel, FaultId, Atlas)> = Vec::new();
    let mut rows: Vec<Row> = Vec::new();
    for id in FaultId::ALL {
        let plain = (HeaterModel::Plain40, FaultId::F04);
        let others = HeaterModel::ALL.iter().map(|heater| (*heater, *id));
        let found = std::iter::once(plain).chain(others).find_map(|(heater, base)| {
            if !atlases.iter().any(|(h, b, _)| (*h, *b) == (heater, base)) {
                atlases.push((heater, base, walked(&house(heater, base)?)));
            }
            let (_, _, atlas) = atlases.iter().find(|(h, b, _)| (*h, *b) == (heater, base))?;
            let (_, here) = atlas.walks().iter().find(|(one, _)| one.fault == *id)?;
            Some(row(*id, here, atlas))
        });
        rows.push(found.unwrap());
    }
    // Thirds of the catalogue: many acts tell a plain one from its likest, few a hard one.
    let mut acts: Vec<usize> = rows.iter().map(|row| row.acts).collect();
    acts.sort_unstable();
    let (third, two) = (acts[acts.len() / 3], acts[2 * acts.len() / 3]);
    let mut text = String::from("[\n");
    for (i, row) in rows.iter().enumerate() {
        let level = if row.acts <= third {
            "hard"
        } else if row.acts <= two {
            "middling"
        } else {
            "plain"
        };
        let alike: Vec<String> = row.alike.iter().map(|id| format!("\"{id}\"")).collect();
        let look = if named_at_first_look(row.fault) { "\"first-look\": true, " } else { "" };
        let end = if i + 1 == rows.len() { "" } else { "," };
        let _ = writeln!(
            text,
            "  {{ \"fault\": \"{}\", \"acts\": {}, \"level\": \"{level}\", {look}\"alike\": [{}] }}{end}",
            row.fault,
            row.acts,
            alike.join(", ")
        );
    }
    text.push_str("]\n");
    let path = tree::root().join("scenarios/drill/alike.json");
    if std::env::var_os("TANKWRIGHT_BLESS").is_some() {
        fs::write(&path, &text).unwrap();
    }
    assert_eq!(fs::read_to_string(&path).unwrap_or_default(), text, "stale: see the head of this file");
}
