//! The same results, to the last bit, natively and in the browser's WebAssembly.

use serde_json::json;
use tankwright_tests::browser::{Browser, Screen};

#[test]
fn deterministic_mathematics_is_the_same_in_the_browser() {
    let Some(browser) = Browser::open_page(Screen::DESK) else { return };
    let count = 20_000;
    let there = browser.call_export_text("maths_witness", &[json!(count)]);
    assert_eq!(there, quantity::witness::maths(count).to_string());
    browser.assert_quiet();
}
