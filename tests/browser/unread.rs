//! What the device keeps and the page cannot read: it is told, nothing of it is lost, and it goes when somebody says so.

use bench::{Action, Cover, KnownSource};
use serde_json::{Value, json};
use tankwright_tests::browser::{Browser, Hand, Screen};

use super::work::keep;

const DRILL: &str = r#"{"seed": 7, "fault": "F01", "heater": "plain-40", "mode": "coached"}"#;

fn acts() -> Vec<Action> {
    vec![
        Action::TellHousehold,
        Action::ProveMeter { on: KnownSource::Receptacle },
        Action::Cover { which: Cover::Upper, off: true },
    ]
}

fn put(browser: &Browser, key: &str, text: &str) {
    browser.run("localStorage.setItem(arguments[0], arguments[1]);", &[json!(key), json!(text)]);
}

/// What was set aside, a line each time.
fn aside(browser: &Browser) -> Vec<Value> {
    let text = browser.run("return localStorage.getItem('tankwright.aside');", &[]);
    text.as_str()
        .unwrap_or_default()
        .lines()
        .map(|line| serde_json::from_str(line).expect("a line"))
        .collect()
}

#[test]
fn a_job_goes_on_up_to_an_act_that_cannot_be_read_and_the_rest_is_set_aside() {
    let Some(browser) = Browser::open_page(Screen::DESK) else { return };
    keep(&browser, DRILL, "Bench 12", &acts());
    put(&browser, "tankwright.act.2", "{\"do\":<img src=x onerror=alert(1)>");
    browser.go("?cut#/drill");
    browser.wait_until("document.querySelector('.notices [data-act=save-unread]')");
    browser.wait_until("document.querySelectorAll('ol.log > li').length === 1");
    browser.wait_for_text("from step 2 on");
    let kept = aside(&browser);
    assert_eq!(kept.len(), 1);
    assert_eq!(kept[0]["tankwright.act.2"], json!("{\"do\":<img src=x onerror=alert(1)>"));
    assert!(kept[0]["tankwright.act.3"].as_str().is_some_and(|act| act.contains("cover")), "{kept:?}");
    browser.assert_accessible();
    browser.picture("unread-act");
    // It is there after a reload too, at the doors, until somebody clears it.
    browser.go("?doors#/");
    browser.wait_until(
        "document.querySelector('[data-door=unread]') && document.querySelector('[data-door=resume]')",
    );
    browser.picture("unread-doors");
    browser.press_at(Hand::Keys, "[data-act=clear-unread]");
    browser.wait_until("!document.querySelector('[data-door=unread]')");
    assert!(aside(&browser).is_empty());
    browser.assert_quiet();
}

#[test]
fn a_job_that_cannot_be_opened_is_set_aside_when_another_begins() {
    let Some(browser) = Browser::open_page(Screen::DESK) else { return };
    keep(&browser, DRILL, "Bench 12", &acts());
    put(&browser, "tankwright.job", "{\"attempt\":\"1\",\"drill\":");
    browser.go("?mangled#/drill");
    browser
        .wait_until("document.querySelector('[role=alert]') && document.querySelector('[data-door=unread]')");
    browser.wait_for_text("cannot be opened");
    browser.assert_accessible();
    browser.picture("unread-head");
    // Nothing of it is touched by looking.
    browser.reload();
    browser.wait_until("document.querySelector('[data-door=unread]')");
    assert!(aside(&browser).is_empty());
    browser.go("?again#/");
    browser.wait_until_started();
    browser.press_at(Hand::Keys, "[data-act=first]");
    browser.wait_until("document.querySelector('.drill') && localStorage.getItem('tankwright.aside')");
    let kept = aside(&browser);
    assert_eq!(kept[0]["tankwright.job"], json!("{\"attempt\":\"1\",\"drill\":"));
    assert!(kept[0]["tankwright.act.3"].is_string(), "{kept:?}");
    let began = browser.run("return localStorage.getItem('tankwright.act.1');", &[]);
    assert_eq!(began, Value::Null, "the new job has no act of the old one");
    browser.go("?doors#/");
    browser.wait_until(
        "document.querySelector('[data-door=unread]') && document.querySelector('[data-door=resume]')",
    );
    browser.assert_quiet();
}
