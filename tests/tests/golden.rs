//! Ten attempts worked by hand. Their replay has to give the same bytes as when they were last looked at:
//! `golden/digests.txt` holds length and digest of each. `TANKWRIGHT_BLESS=1 cargo test -p tankwright-tests
//! --test golden` writes it anew; look at `cargo run -- trace tests/golden` before.

#![allow(clippy::unwrap_used, clippy::panic, reason = "a test program: a failure here is the answer")]

use std::collections::BTreeMap;
use std::fs;
use std::path::PathBuf;

use bench::Ending;
use drill::{Attempt, Graded, Grader, Rubric, RuleId};
use quantity::Digest;

const NAMES: [&str; 10] = [
    "perfect",
    "careless",
    "dangerous",
    "wrong-part",
    "dry-fire",
    "scald",
    "flood",
    "gave-up",
    "exam-timed-out",
    "cured-by-luck",
];

fn folder() -> PathBuf {
    PathBuf::from(env!("CARGO_MANIFEST_DIR")).join("golden")
}

fn all() -> BTreeMap<&'static str, Graded> {
    let (mut grader, rubric) = (Grader::new(), Rubric::plain());
    let one = |name: &'static str| {
        let text = fs::read_to_string(folder().join(format!("{name}.json"))).unwrap();
        let attempt = Attempt::read(&text).unwrap_or_else(|e| panic!("{name}: {e}"));
        (name, grader.grade(&attempt, &rubric).unwrap())
    };
    NAMES.into_iter().map(one).collect()
}

#[test]
fn traces_are_the_bytes_they_were() {
    let mut found = String::new();
    for (name, graded) in all() {
        let bytes = drill::replay::trace(&graded.session, &graded.score);
        found += &format!("{name} {} {}\n", bytes.len(), Digest::of(&bytes));
    }
    let path = folder().join("digests.txt");
    if std::env::var_os("TANKWRIGHT_BLESS").is_some() {
        fs::write(&path, &found).unwrap();
    }
    let blessed = fs::read_to_string(&path).unwrap_or_default();
    assert_eq!(found, blessed, "a golden attempt comes out otherwise: see the head of this file");
}

/// What each attempt is there to show holds whatever is blessed.
#[test]
fn each_shows_what_it_is_for() {
    let all = all();
    let met = |name: &str, rule: RuleId| all[name].score.lines.iter().any(|l| l.rule == rule);
    let perfect = &all["perfect"];
    assert_eq!(perfect.score.total(), 100.0, "{:?}", perfect.score.lines);
    assert!(perfect.score.right && perfect.score.cured && !perfect.score.failed);
    let refused = |e: &std::rc::Rc<bench::Entry>| matches!(e.outcome.shown, bench::Shown::Refused { .. });
    assert!(!perfect.session.log.iter().any(refused));

    let careless = &all["careless"];
    assert!(careless.score.cured && careless.score.right && !careless.score.failed);
    assert!(careless.score.total() < 60.0);
    assert!(met("careless", RuleId::HouseholdNotTold) && met("careless", RuleId::Untorqued));

    assert!(all["dangerous"].score.failed && met("dangerous", RuleId::TouchedLive));
    assert!(met("wrong-part", RuleId::ChangedInVain) && met("wrong-part", RuleId::NotCured));
    assert!(met("dry-fire", RuleId::BurntElement) && met("dry-fire", RuleId::EnergisedNotFull));
    assert!(all["dry-fire"].score.failed);
    assert!(met("scald", RuleId::Burn) && all["scald"].score.failed);
    assert!(met("flood", RuleId::Flood));
    assert!(met("gave-up", RuleId::NoFinding) && met("gave-up", RuleId::NotCured));
    assert_eq!(all["exam-timed-out"].session.ended, Some(Ending::TimeOut));
    assert!(met("cured-by-luck", RuleId::CuredByLuck) && all["cured-by-luck"].score.cured);
}
