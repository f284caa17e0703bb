//! What chance deals, to the byte: a record of worked drills holds only as long as the same seeds deal the same houses.

use std::fs;
use std::path::PathBuf;

use bench::Mode;
use drill::Order;
use quantity::Digest;
use tankwright_tests::cores;

/// Drills of the record.
const DRILLS: u32 = 2000;

/// Digest of one drill: its fault, its house and people as they are found, the week they lived through.
fn of_one(seed: &u32) -> Digest {
    let drill = drill::make(&Order::chance(*seed, Mode::Solo)).unwrap();
    Digest::of(&serde_json::to_vec(&(drill.title, drill.fault, drill.week, drill.job)).unwrap())
}

/// A recorded run: `cargo test --release -p tankwright-tests --test dealing -- --ignored bytes --nocapture`.
/// `TANKWRIGHT_BLESS=1` writes the record anew, after whatever made it otherwise is understood.
#[test]
#[ignore = "two thousand weeks lived"]
fn chance_deals_the_bytes_it_dealt() {
    let seeds: Vec<u32> = (0..DRILLS).collect();
    let each = cores::on_two(&seeds, of_one);
    let all: Vec<u8> = each.iter().flat_map(|one| one.0).collect();
    let found = format!("{DRILLS} {}\n", Digest::of(&all));
    println!("{found}");
    let path = PathBuf::from(env!("CARGO_MANIFEST_DIR")).join("tests/dealing/bytes.txt");
    if std::env::var_os("TANKWRIGHT_BLESS").is_some() {
        fs::write(&path, &found).unwrap();
    }
    assert_eq!(found, fs::read_to_string(&path).unwrap_or_default(), "chance deals other drills than it did");
}
