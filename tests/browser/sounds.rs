//! Sounds: none until they are wanted, then the one that belongs to the act, from the page's own files.

use bench::{Action, Cover};
use serde_json::json;
use tankwright_tests::browser::{Browser, Hand, Screen};

use super::work::keep;

const DRILL: &str = r#"{"seed": 7, "fault": "F55", "heater": "plain-40", "mode": "coached"}"#;

/// Notes what is to be played, and answers as a browser that plays it.
const NOTE: &str = "
window.played = [];
HTMLMediaElement.prototype.play = function () {
    window.played.push(new URL(this.src).pathname.split('/').pop());
    return Promise.resolve();
};";

#[test]
fn sounds_are_off_until_they_are_wanted() {
    let Some(browser) = Browser::open_page(Screen::DESK) else { return };
    let bare = [Cover::Upper, Cover::UpperInsulation, Cover::UpperShield];
    let before = bare.map(|which| Action::Cover { which, off: true });
    keep(&browser, DRILL, "Bench 12", &before);
    browser.go("?sounds#/drill");
    browser.wait_until("document.querySelector(\"[data-act='try-start']\")");
    // Both files are there and can be played under the page's own policy.
    for name in ["tone", "click"] {
        let play = format!(
            "const answered = arguments[arguments.length - 1];
             const one = new Audio('assets/asked/{name}.wav');
             one.oncanplaythrough = () => answered(true);
             one.onerror = () => answered(false);
             one.load();"
        );
        assert_eq!(browser.run_until_answered(&play, &[]), json!(true), "{name}");
    }
    browser.run(NOTE, &[]);
    let start = |more: usize| {
        browser.press_at(Hand::Keys, "[data-act=try-start]");
        let lines = before.len() + more;
        browser.wait_until(&format!("document.querySelectorAll('ol.log > li').length === {lines}"));
        browser.run("return window.played;", &[])
    };
    assert_eq!(start(1), json!([]));
    browser.press_at(Hand::Keys, "[data-act=here]");
    browser.press_at(Hand::Mouse, "[data-field=here-sound]");
    browser.key("Escape");
    browser.wait_until("!document.querySelector('dialog[open]')");
    assert_eq!(start(2), json!(["click.wav"]));
    browser.assert_quiet();
}
