//! The rules that hold the source tree together.

use std::collections::BTreeSet;
use std::fs;
use std::path::{Path, PathBuf};

use tankwright_tests::tree;

/// Longest production part of a file, and where a warning begins.
const LONGEST: usize = 400;
const LONG: usize = 300;

/// Each crate may use those before it. Those on the right of the list are free to use all before them.
const ORDER: [&str; 9] =
    ["quantity", "solver", "plant", "bench", "diagnosis", "drill", "words", "tankwright-app", "tankwright"];

/// Words that nothing in the simulated world may know.
const NOT_IN_SCENARIOS: [&str; 8] =
    ["std::time", "web_sys", "yew", "gloo", "js_sys", "wasm_bindgen", "HashMap", "HashSet"];

fn rust_files() -> Vec<(PathBuf, String)> {
    let files = tree::files_below(&tree::root());
    let rust = files.into_iter().filter(|path| path.extension().is_some_and(|end| end == "rs"));
    let read: Vec<_> =
        rust.map(|path| (path.clone(), fs::read_to_string(&path).expect("a source file is text"))).collect();
    assert!(read.len() > 20, "only {} files found", read.len());
    read
}

/// The text before the file's tests.
fn production(text: &str) -> &str {
    text.split("#[cfg(test)]").next().unwrap_or(text)
}

/// Whether a file has no production part: test programs, and `tests.rs` beside what it tests.
fn is_all_tests(path: &Path) -> bool {
    let root = tree::root();
    let inside = path.strip_prefix(&root).unwrap_or(path);
    let in_package = inside.strip_prefix("tests").unwrap_or(inside);
    path.ends_with("tests.rs")
        || inside.starts_with("tests/browser")
        || in_package.iter().any(|part| part == "tests")
}

#[test]
fn what_counts_as_all_tests() {
    for (file, expected) in [
        ("tests/tests/tidy.rs", true),
        ("tests/browser/main.rs", true),
        ("app/host/tests/program.rs", true),
        ("scenarios/solver/src/network/tests.rs", true),
        ("tests/src/browser/mod.rs", false),
        ("scenarios/plant/src/household/week.rs", false),
    ] {
        assert_eq!(is_all_tests(&tree::root().join(file)), expected, "{file}");
    }
}

#[test]
fn every_file_says_what_it_is() {
    let silent: Vec<_> = rust_files().into_iter().filter(|(_, text)| !text.starts_with("//! ")).collect();
    assert!(
        silent.is_empty(),
        "no `//!` line first: {:?}",
        silent.iter().map(|(path, _)| path).collect::<Vec<_>>()
    );
}

#[test]
fn files_are_short() {
    let mut too_long = Vec::new();
    for (path, text) in rust_files() {
        if is_all_tests(&path) {
            continue;
        }
        let lines = production(&text).lines().count();
        if lines > LONGEST {
            too_long.push(format!("{} has {lines} lines before its tests", path.display()));
        } else if lines > LONG {
            println!("warning: {} has {lines} lines before its tests", path.display());
        }
    }
    assert!(too_long.is_empty(), "split these: {too_long:#?}");
}

#[test]
fn a_refusal_is_a_value_and_no_test_waits_for_a_panic() {
    let forbidden = ["#[should", "_panic"].concat();
    let found: Vec<_> = rust_files().into_iter().filter(|(_, text)| text.contains(&forbidden)).collect();
    assert!(found.is_empty(), "{:?}", found.iter().map(|(path, _)| path).collect::<Vec<_>>());
}

#[test]
fn the_simulated_world_knows_no_clock_no_chance_and_no_screen() {
    let scenarios = tree::root().join("scenarios");
    for (path, text) in rust_files() {
        // Benchmarks and exporters stand outside the world and may time it.
        let in_world = path.components().any(|part| part.as_os_str() == "src");
        if !path.starts_with(&scenarios) || !in_world {
            continue;
        }
        for word in NOT_IN_SCENARIOS {
            let code = production(&text).lines().filter(|line| !line.trim_start().starts_with("//"));
            let line = code.into_iter().find(|line| line.contains(word));
            assert!(line.is_none(), "{}: {word} in {line:?}", path.display());
        }
    }
}

#[test]
fn crates_depend_in_one_direction() {
    let manifests = tree::files_below(&tree::root()).into_iter().filter(|path| path.ends_with("Cargo.toml"));
    let mut seen = 0;
    for path in manifests {
        let text = fs::read_to_string(&path).unwrap();
        let Some(rank) = package_name(&text).and_then(|name| ORDER.iter().position(|known| *known == name))
        else {
            continue;
        };
        seen += 1;
        for used in dependencies(&text) {
            if let Some(above) = ORDER.iter().position(|known| *known == used) {
                assert!(above < rank, "{} may not use {used}", path.display());
            }
        }
    }
    assert_eq!(seen, ORDER.len(), "a crate is missing or new: put it into its place");
}

fn package_name(manifest: &str) -> Option<&str> {
    manifest.lines().find_map(|line| line.strip_prefix("name = ")).map(|name| name.trim_matches('"'))
}

/// Names in the sections for dependencies; those for tests alone are free.
fn dependencies(manifest: &str) -> Vec<&str> {
    let mut inside = false;
    let mut names = Vec::new();
    for line in manifest.lines() {
        if line.starts_with('[') {
            inside = line.ends_with("dependencies]") && !line.contains("dev-");
        } else if inside && let Some((name, _)) = line.split_once(['.', ' ', '=']) {
            names.push(name.trim());
        }
    }
    names
}

#[test]
fn generated_and_private_things_stay_out_of_the_tree() {
    let ignored = fs::read_to_string(tree::root().join(".gitignore")).unwrap();
    for folder in ["/target", "/dist", "/tests/.tools", "/tests/out"] {
        assert!(ignored.lines().any(|line| line == folder), "{folder} is not ignored");
    }
    let home = ["/ho", "me/"].concat();
    let root = ["/ro", "ot/"].concat();
    for (path, text) in rust_files() {
        assert!(
            !text.contains(&home) && !text.contains(&root),
            "{} names a machine's folder",
            path.display()
        );
    }
    assert!(Path::new(&tree::root()).join("LICENSE-MIT").is_file());
}

/// Components that are no part of a screen: what holds the page together, plays sounds, computes ahead. The drill's page,
/// which is a screenful, each part of which is shown.
const UNSEEN: [&str; 8] =
    ["App", "Drill", "Rehearsal", "Sounds", "TermsProvider", "Title", "Worded", "WorkProvider"];
/// Pages that the gallery shows without a job: what they hold with one has to be shown by itself.
const EMPTY: [&str; 2] = ["Debrief", "Show"];

/// Every component that a file has, and every one that it shows.
fn components(text: &str) -> (Vec<&str>, BTreeSet<&str>) {
    let name = |rest: &'_ str| rest.find(|c: char| !c.is_alphanumeric()).unwrap_or(rest.len());
    let has = text.split("#[component]").skip(1).filter_map(|rest| {
        let rest = rest.split_once("fn ")?.1;
        Some(&rest[..name(rest)])
    });
    // What follows a name is a type's: `Rc<Drill>`.
    let tags = text.match_indices('<').filter(|(at, _)| !text[..*at].ends_with(char::is_alphanumeric));
    let shows = tags.map(|(at, _)| &text[at + 1..]).map(|rest| &rest[..name(rest)]);
    (has.collect(), shows.filter(|one| one.starts_with(|c: char| c.is_uppercase())).collect())
}

/// The gallery shows every component of the page, by itself or within another one. File by file: what a file shows counts
/// for every component in it.
#[test]
fn every_component_is_in_the_gallery() {
    let pages = tree::root().join("app/src");
    let files: Vec<(PathBuf, String)> =
        rust_files().into_iter().filter(|(path, _)| path.starts_with(&pages)).collect();
    let read: Vec<_> = files
        .iter()
        .map(|(path, text)| {
            let (has, shows) = components(production(text));
            (path.starts_with(pages.join("gallery")), has, shows)
        })
        .collect();
    let mut shown: BTreeSet<&str> =
        read.iter().filter(|one| one.0).flat_map(|(.., shows)| shows.iter().copied()).collect();
    loop {
        let reached = |has: &[&str]| has.iter().any(|one| shown.contains(one) && !EMPTY.contains(one));
        let more: BTreeSet<&str> = read
            .iter()
            .filter(|(_, has, _)| reached(has))
            .flat_map(|(.., shows)| shows.iter().copied())
            .filter(|one| !shown.contains(one))
            .collect();
        if more.is_empty() {
            break;
        }
        shown.extend(more);
    }
    let all: BTreeSet<&str> =
        read.iter().filter(|one| !one.0).flat_map(|(_, has, _)| has.iter().copied()).collect();
    assert!(all.len() > 100, "only {} components found", all.len());
    let missing: Vec<&str> = all.iter().copied().filter(|one| !shown.contains(one)).collect();
    assert_eq!(missing, UNSEEN, "not in the gallery, or in it although it is listed as unseen");
}
