//! What the device keeps and the page cannot read: it is told, nothing of it is lost, and it goes when somebody says so.

use std::collections::BTreeMap;

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

/// What was set aside: each entry by the end of its key, and the device's own text.
fn aside(browser: &Browser) -> BTreeMap<String, String> {
    let found = browser.run(
        "return Object.entries(localStorage).filter(([key]) => key.startsWith('tw.old.'))
            .map(([key, text]) => [key.split('.').slice(3).join('.'), text]);",
        &[],
    );
    serde_json::from_value::<Vec<(String, String)>>(found).expect("entries").into_iter().collect()
}

/// Fills what is left of the device's storage, to the last character.
const FILL: &str = "
const filler = 'filler';
let text = '';
localStorage.setItem(filler, text);
for (let more = 1 << 24; more > 0; more >>= 1) {
    try {
        localStorage.setItem(filler, text + 'x'.repeat(more));
        text += 'x'.repeat(more);
        more <<= 1;
    } catch { /* The next half. */ }
}
try { localStorage.setItem('y', ''); return 'there is room'; } catch { return text.length > 0; }";

fn fill(browser: &Browser) {
    assert_eq!(browser.run(FILL, &[]), json!(true));
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
    assert_eq!(kept["act.2"], "{\"do\":<img src=x onerror=alert(1)>");
    assert!(kept["act.3"].contains("cover"), "{kept:?}");
    assert!(kept["job"].contains("Bench 12") && kept["act.1"].contains("tell-household"), "{kept:?}");
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
    browser.wait_until("document.querySelector('.drill') && Object.keys(localStorage).some((key) => key.startsWith('tw.old.'))");
    let kept = aside(&browser);
    assert_eq!(kept["job"], "{\"attempt\":\"1\",\"drill\":");
    assert!(kept.contains_key("act.3"), "{kept:?}");
    let began = browser.run("return localStorage.getItem('tankwright.act.1');", &[]);
    assert_eq!(began, Value::Null, "the new job has no act of the old one");
    browser.go("?doors#/");
    browser.wait_until(
        "document.querySelector('[data-door=unread]') && document.querySelector('[data-door=resume]')",
    );
    browser.assert_quiet();
}

/// On a device whose storage is full: what cannot be read moves, and nothing of it is lost.
#[test]
fn a_full_storage_loses_nothing_of_what_cannot_be_read() {
    let Some(browser) = Browser::open_page(Screen::DESK) else { return };
    // Another act was spoilt: what follows it moves.
    keep(&browser, DRILL, "Bench 12", &acts());
    put(&browser, "tankwright.act.2", "{\"do\":");
    fill(&browser);
    browser.go("?full#/drill");
    browser.wait_until("document.querySelectorAll('ol.log > li').length === 1");
    let kept = aside(&browser);
    assert_eq!(kept["act.2"], "{\"do\":");
    assert!(kept["act.3"].contains("cover"), "{kept:?}");
    let goes_on = browser.run("return localStorage.getItem('tankwright.act.1');", &[]);
    assert!(goes_on.as_str().is_some_and(|act| act.contains("tell-household")), "{goes_on}");
    // The head was spoilt: all of the job moves once another begins, and the page says that it keeps nothing.
    keep(&browser, DRILL, "Bench 12", &acts());
    put(&browser, "tankwright.job", "{\"attempt\":\"1\",\"drill\":");
    fill(&browser);
    browser.go("?again#/");
    browser.wait_until_started();
    browser.press_at(Hand::Keys, "[data-act=first]");
    browser.wait_until("document.querySelector('.notices .keeping')");
    let kept = aside(&browser);
    let ends: Vec<&str> = kept.keys().map(String::as_str).collect();
    assert_eq!(ends, ["act.1", "act.2", "act.3", "job"]);
    assert_eq!(kept["job"], "{\"attempt\":\"1\",\"drill\":");
    browser.picture("unread-full");
    // It goes on saying so, and keeps all of the job once there is room.
    const NOTICE: &str = "return document.querySelector('.notices .keeping')?.textContent ?? '';";
    let full = browser.run(NOTICE, &[]);
    let ask = |what: &str, lines: usize| {
        browser.press_at(Hand::Keys, &format!("[data-act='ask question={what}']"));
        browser.wait_until(&format!("document.querySelectorAll('ol.log > li').length === {lines}"));
    };
    ask("last-good", 1);
    browser.run_until_answered("setTimeout(arguments[arguments.length - 1], 200);", &[]);
    assert_eq!(browser.run(NOTICE, &[]), full);
    browser.run("localStorage.removeItem('filler');", &[]);
    ask("too-hot", 2);
    browser.wait_until("!document.querySelector('.notices .keeping')");
    let begun = "return ['job', 'act.1', 'act.2'].map(key => localStorage.getItem(`tankwright.${key}`)?.slice(0, 12));";
    assert_eq!(browser.run(begun, &[]), json!(["{\"attempt\":\"", "{\"do\":\"ask\",", "{\"do\":\"ask\","]));
    browser.assert_quiet();
}
