//! A long wait on a slow device: the clock runs in turns, a bar shows how far it is, and it can be stopped. What the page
//! keeps is the shorter wait, and folds to the same again.

use bench::{Action, Session};
use drill::Order;
use serde_json::{Value, json};
use tankwright_tests::browser::{Browser, Hand, Screen};
use words::{Units, Voice};

use super::work::keep;

/// A heater whose screws are followed closely and whose water boils: the longest that four hours take.
const SLOWEST: &str = r#"{"seed": 3, "fault": "F48", "heater": "both-50", "mode": "coached"}"#;

/// Nothing heats.
const COLD: &str = r#"{"seed": 7, "fault": "F09", "heater": "plain-40", "mode": "coached"}"#;

/// Presses Stop as soon as it is there, and notes what the bar shows then.
const STOP: &str = "
window.shares = [];
new MutationObserver(() => {
    const bar = document.querySelector('.live progress');
    const share = bar?.value;
    if (bar && share !== window.shares.at(-1)) window.shares.push(share);
    if (window.shares.length === arguments[0]) document.querySelector('.live [data-act=stop]')?.click();
}).observe(document.querySelector('.foot'), { subtree: true, childList: true, attributes: true });";

fn minutes(browser: &Browser) -> f64 {
    browser.wait_until("localStorage.getItem('tankwright.act.1')");
    let act = browser.run("return localStorage.getItem('tankwright.act.1');", &[]);
    match serde_json::from_str(act.as_str().unwrap_or_default()) {
        Ok(Action::Wait { minutes }) => minutes,
        other => panic!("{other:?}"),
    }
}

fn wait_four_hours(browser: &Browser, turns: u32) {
    keep(browser, SLOWEST, "", &[]);
    browser.go(&format!("?waits{turns}#/drill"));
    browser.wait_until("document.querySelector('.drill .time')");
    browser.run(STOP, &[json!(turns)]);
    browser.slow_down(20.0);
    let listed = "select:has(option[value='wait minutes=240.0'])";
    let list = browser.reach(Hand::Keys, listed);
    browser.choose(Hand::Keys, &list, "wait minutes=240.0");
    browser.press_at(Hand::Keys, "[data-act='wait minutes=240.0']");
}

#[test]
fn a_long_wait_shows_how_far_it_is_and_can_be_stopped() {
    let Some(browser) = Browser::open_page(Screen::DESK) else { return };
    wait_four_hours(&browser, 1);
    let waited = minutes(&browser);
    assert!((60.0..240.0).contains(&waited) && waited % 10.0 == 0.0, "{waited} minutes");
    // What is kept folds to the same world, whose clock stands where it was stopped.
    let clock = || browser.run("return document.querySelector('.top .clock').textContent;", &[]);
    let stopped = clock();
    browser.reload();
    browser.wait_until("document.querySelector('ol.log > li')");
    assert_eq!(clock(), stopped);
    assert_eq!(minutes(&browser), waited);
    browser.assert_quiet();
}

#[test]
fn people_who_are_let_use_water_say_how_it_was() {
    let Some(browser) = Browser::open_page(Screen::DESK) else { return };
    keep(&browser, COLD, "", &[]);
    browser.go("?living#/drill");
    browser.wait_until("document.querySelector('.drill .time')");
    let list = browser.reach(Hand::Keys, "select:has(option[value='let-them-use minutes=1440.0'])");
    browser.choose(Hand::Keys, &list, "let-them-use minutes=1440.0");
    browser.press_at(Hand::Keys, "[data-act='let-them-use minutes=1440.0']");
    browser.wait_until("localStorage.getItem('tankwright.act.1')");
    // The page's log says what the same act folds to natively.
    let drill = drill::make(&Order::read(COLD).unwrap()).unwrap();
    let mut session = Session::begin(drill.job);
    let outcome = session.step(&Action::LetThemUse { minutes: 1440.0 });
    let said = Voice::english(Units::Customary).shown(&outcome.shown);
    assert!(said.contains("never warm, they say"), "{said}");
    browser.wait_until("document.querySelector('ol.log > li')");
    let log = browser.run("return document.querySelector('ol.log > li').textContent;", &[]);
    assert!(log.as_str().unwrap_or_default().contains(&said), "{log} {said}");
    browser.assert_quiet();
}

#[test]
fn a_long_wait_that_nobody_stops_ends_by_itself() {
    let Some(browser) = Browser::open_page(Screen::DESK) else { return };
    wait_four_hours(&browser, 1000);
    assert_eq!(minutes(&browser), 240.0);
    let shares = browser.run("return window.shares;", &[]);
    let shares: Vec<f64> = shares.as_array().into_iter().flatten().filter_map(Value::as_f64).collect();
    assert!(
        shares.len() > 1 && shares.is_sorted() && shares.iter().all(|share| (0.2..1.0).contains(share)),
        "{shares:?}"
    );
    assert!(!browser.has(".live progress"), "the bar is gone");
    browser.assert_accessible();
    browser.assert_quiet();
}
