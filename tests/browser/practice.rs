//! Taking an act back with the coach, and working a job again from one of its acts: both by keys alone, both marked.

use bench::{Action, Cover, KnownSource, Mode};
use drill::{Attempt, Practice};
use serde_json::{Value, json};
use tankwright_tests::browser::{Browser, Hand, Screen};

use super::work::{Work, keep};

fn acts() -> Vec<Action> {
    vec![
        Action::TellHousehold,
        Action::ProveMeter { on: KnownSource::Receptacle },
        Action::Cover { which: Cover::Upper, off: true },
    ]
}

/// What marks the job on the device.
fn marks(browser: &Browser) -> Practice {
    let head = browser.run("return localStorage.getItem('tankwright.job');", &[]);
    let head: Value = serde_json::from_str(head.as_str().unwrap_or_default()).expect("a head");
    serde_json::from_value(head["practice"].clone()).unwrap_or_default()
}

/// Waits until the device keeps just so many acts.
fn kept(browser: &Browser, acts: usize) {
    let there = |at: usize| format!("localStorage.getItem('tankwright.act.{at}') !== null");
    let last = if acts == 0 { "true".to_owned() } else { there(acts) };
    browser.wait_until(&format!("{last} && !({})", there(acts + 1)));
    browser.wait_until(&format!("document.querySelectorAll('ol.log > li').length === {acts}"));
}

#[test]
fn acts_are_taken_back_and_a_job_is_worked_again_from_the_middle() {
    let Some(browser) = Browser::open_page(Screen::DESK) else { return };
    let order = drill::Order::read(r#"{"seed": 7, "fault": "F01", "heater": "plain-40", "mode": "coached"}"#)
        .expect("an order");
    assert_eq!(order.mode, Mode::Coached);
    keep(&browser, &order.write(), "Bench 12", &acts());
    browser.go("?again#/drill");
    browser.wait_until("document.querySelector('.drill')");
    kept(&browser, 3);
    browser.press_at(Hand::Keys, "[data-act=take-back]");
    kept(&browser, 2);
    assert_eq!(marks(&browser), Practice { carried: 0, taken_back: 1 });
    let lost = browser.run("return document.activeElement === document.body;", &[]);
    assert_eq!(lost, json!(false), "the focus is lost");
    browser.assert_accessible();
    browser.picture("practice-taken-back");
    // After a reload the world is the same, and the mark stands.
    browser.reload();
    kept(&browser, 2);
    assert_eq!(marks(&browser).taken_back, 1);
    for selector in ["[data-act=hand-over-asked]", "[data-act=hand-over]", ".over a"] {
        browser.press_at(Hand::Keys, selector);
    }
    browser.press_at(Hand::Keys, ".steps li:first-child button");
    browser.press_at(Hand::Keys, "[data-act=again-from]");
    browser.wait_until("document.querySelector('.drill')");
    kept(&browser, 1);
    assert_eq!(marks(&browser), Practice { carried: 1, taken_back: 1 });
    browser.wait_for_text("Worked again from act 1, as practice");
    // Handed in, the file says so.
    for selector in ["[data-act=hand-over-asked]", "[data-act=hand-over]", ".over a"] {
        browser.press_at(Hand::Keys, selector);
    }
    browser.press_at(Hand::Keys, "[data-door=hand-in] summary");
    browser.wait_until("document.querySelector('[data-door=hand-in] textarea')");
    let file = browser.run("return document.querySelector('[data-door=hand-in] textarea').value;", &[]);
    let attempt = Attempt::read(file.as_str().unwrap_or_default()).expect("an attempt");
    assert_eq!((attempt.practice, attempt.actions.len()), (Practice { carried: 1, taken_back: 1 }, 2));
    browser.assert_quiet();
}

/// What a solo drill or an exam has done is done.
#[test]
fn nothing_is_taken_back_without_the_coach() {
    let Some(browser) = Browser::open_page(Screen::DESK) else { return };
    keep(&browser, r#"{"seed": 7, "fault": "F01", "heater": "plain-40", "mode": "solo"}"#, "", &acts());
    browser.go("?solo#/drill");
    let work = Work::begun(&browser, Hand::Keys);
    kept(&browser, 3);
    assert!(!work.browser.has("[data-act=take-back]"));
}
