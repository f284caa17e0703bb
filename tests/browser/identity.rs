//! The same results, to the last bit, natively and in the browser's WebAssembly.

use std::fs;

use serde_json::json;
use tankwright_tests::browser::{Browser, Screen};
use tankwright_tests::tree;
use words::{Units, Voice};

#[test]
fn deterministic_mathematics_is_the_same_in_the_browser() {
    let Some(browser) = Browser::open_page(Screen::DESK) else { return };
    let count = 20_000;
    let there = browser.call_export_text("maths_witness", &[json!(count)]);
    assert_eq!(there, quantity::witness::maths(count).to_string());
    browser.assert_quiet();
}

/// Every attempt worked by hand, folded on both sides: the trace has a digest of the whole state at each step.
#[test]
fn attempts_fold_to_the_same_bytes_in_the_browser() {
    let Some(browser) = Browser::open_page(Screen::DESK) else { return };
    let voice = Voice::english(Units::Customary);
    let files = tree::files_below(&tree::root().join("tests/golden"));
    let attempts: Vec<_> =
        files.into_iter().filter(|path| path.extension().is_some_and(|end| end == "json")).collect();
    assert!(attempts.len() >= 10, "only {} attempts in tests/golden", attempts.len());
    for path in attempts {
        let text = fs::read_to_string(&path).expect("an attempt is text");
        let here = voice.trace_of(&text).unwrap_or_else(|error| panic!("{}: {error}", path.display()));
        let there = browser.call_export_text("fold_attempt", &[json!(text)]);
        let differs = here.lines().zip(there.lines()).find(|(here, there)| here != there);
        assert!(here == there, "{} folds otherwise in the browser: {differs:#?}", path.display());
        assert!(here.lines().count() > 10, "{} has hardly any steps:\n{here}", path.display());
    }
    browser.assert_quiet();
}
