//! How few keys it takes from a place to a reading: each row of buttons, and all points of a detail, are one stop of the
//! Tab key, with the arrows inside.

use bench::{Action, Cover};
use plant::{HeaterModel, Place};
use serde_json::{Value, json};
use tankwright_tests::browser::{Browser, Hand, Screen};

use super::work::{COMPARTMENTS, keep};

/// Tabs from a place's heading to the button that takes the reading, by the way to the meter, and without it.
const SHORT: usize = 10;
const LONG: usize = 30;
/// Places whose points a lead reaches.
const POINTS: [Place; 5] = [
    Place::LoadCenter,
    Place::JunctionBox,
    Place::HeaterTop,
    Place::UpperCompartment,
    Place::LowerCompartment,
];

/// A house laid bare, at a place that was gone to by keys.
fn at(browser: &Browser, heater: HeaterModel) {
    let drill = format!(r#"{{"seed": 7, "fault": "F01", "heater": "{heater}", "mode": "solo"}}"#);
    let off = [Action::Breaker { slot: 2, on: false }, Action::Lock { slot: 2, on: true }];
    let covers = [Cover::PanelFront, Cover::JunctionBox].into_iter().chain(COMPARTMENTS);
    let acts: Vec<Action> =
        off.into_iter().chain(covers.map(|which| Action::Cover { which, off: true })).collect();
    keep(browser, &drill, "", &acts);
    browser.go(&format!("?economy-{heater}#/drill"));
    browser.wait_until_started();
    browser.wait_until("document.querySelector('.places [data-go]')");
}

fn go(browser: &Browser, place: Place) {
    browser.press_at(Hand::Keys, &format!("[data-go={}]", place.name()));
    browser.wait_until(&format!("document.querySelector('[data-at={}]')", place.name()));
    browser.wait_until("document.activeElement.id === 'at-hand' && !document.querySelector('.filling')");
}

fn here(browser: &Browser, selector: &str) -> bool {
    browser.run("return document.activeElement.matches(arguments[0]);", &[json!(selector)])
        == Value::Bool(true)
}

/// Presses Tab until the focus is on something; answers how often.
#[track_caller]
fn tabs_to(browser: &Browser, selector: &str) -> usize {
    for tabs in 1..=LONG {
        browser.key("Tab");
        if here(browser, selector) {
            return tabs;
        }
    }
    panic!("{LONG} tabs do not lead to {selector:?}; the focus is on {:?}", browser.focused().name());
}

#[test]
fn from_a_place_to_a_reading_it_takes_few_tabs() {
    let Some(browser) = Browser::open_page(Screen::LAPTOP) else { return };
    for heater in [HeaterModel::Plain40, HeaterModel::Board50] {
        at(&browser, heater);
        for place in POINTS {
            go(&browser, place);
            let to_points = tabs_to(&browser, ".detail [data-point]");
            // Both leads, by arrows alone.
            browser.key("Enter");
            browser.key("ArrowRight");
            browser.key("Enter");
            let picked = "document.activeElement.getAttribute('aria-pressed') === 'true'";
            browser.wait_until(picked);
            let mut tabs = to_points + tabs_to(&browser, ".place .skip");
            browser.key("Enter");
            browser.wait_until("document.activeElement.id === 'meter'");
            tabs += tabs_to(&browser, "[data-act=take-reading]");
            assert!(tabs <= SHORT, "{heater}, {place}: {tabs} tabs");
            // The same without the way that leads past the acts, and back into the row where it was left.
            browser.run("document.getElementById('at-hand').focus();", &[]);
            let plain = tabs_to(&browser, "[data-act=take-reading]");
            println!("{heater}, {place}: {tabs} tabs, {plain} without the way to the meter");
            assert!(plain <= LONG, "{heater}, {place}: {plain} tabs");
            browser.keys("Shift+Tab", plain - to_points);
            let first = browser.run("return document.activeElement.dataset.point ?? '';", &[]);
            let left = browser
                .run("return document.querySelector('.detail [aria-pressed=true]').dataset.point;", &[]);
            assert_eq!(first, left, "{heater}, {place}: the row is left and found at the same point");
        }
    }
    browser.assert_quiet();
}

/// The arrows lead along all points of a detail and no farther, Home and End to its ends.
#[test]
fn the_arrows_reach_every_point() {
    let Some(browser) = Browser::open_page(Screen::LAPTOP) else { return };
    at(&browser, HeaterModel::Plain40);
    for place in POINTS {
        go(&browser, place);
        tabs_to(&browser, ".detail [data-point]");
        let all = browser.run(
            "return [...document.querySelectorAll('.detail [data-point]')].map((one) => one.dataset.point);",
            &[],
        );
        let all: Vec<Value> = all.as_array().cloned().expect("points");
        let point = || browser.run("return document.activeElement.dataset.point;", &[]);
        let mut passed = vec![point()];
        for _ in 1..all.len() {
            browser.key("ArrowDown");
            passed.push(point());
        }
        assert_eq!(passed, all, "{place}");
        browser.key("ArrowRight");
        assert_eq!(Some(&point()), all.last(), "{place}: the last stays the last");
        browser.key("Home");
        assert_eq!(Some(&point()), all.first(), "{place}");
        browser.key("End");
        assert_eq!(Some(&point()), all.last(), "{place}");
        browser.key("ArrowLeft");
        assert_eq!(Some(&point()), all.iter().rev().nth(1), "{place}");
    }
    browser.assert_quiet();
}
