//! What a screen reader is told by itself: each reading once, whatever else the page redraws, the same reading again too.

use bench::{Action, Cover, MeterFunction};
use plant::{Place, Screw};
use serde_json::Value;
use tankwright_tests::browser::{Browser, Hand, Screen};

use super::work::{Work, keep};

const DRILL: &str = r#"{"seed": 7, "fault": "F01", "heater": "plain-40", "mode": "coached"}"#;

/// Notes every text that comes into a live region. A region that changes in two turns is told twice.
const LISTEN: &str = "
const live = '[aria-live]:not([aria-live=off]), [role=status], [role=alert], [role=log], output';
window.told = [];
new MutationObserver((all) => {
    const regions = new Set();
    for (const one of all) {
        const came = one.type === 'characterData' || [...one.addedNodes].some((node) => node.textContent.trim());
        if (!came) continue;
        const at = one.target.nodeType === 1 ? one.target : one.target.parentElement;
        const region = at?.closest(live);
        if (region) regions.add(region);
        for (const node of one.addedNodes)
            for (const alert of node.querySelectorAll?.('[role=alert]') ?? []) regions.add(alert);
    }
    for (const region of regions) window.told.push(region.textContent.trim());
}).observe(document, { subtree: true, childList: true, characterData: true });";

/// What was told since it was last asked, once the page has come to rest.
fn told(browser: &Browser) -> Vec<String> {
    browser.run_until_answered(
        "const done = arguments[arguments.length - 1];
         setTimeout(() => requestAnimationFrame(() => setTimeout(done, 0, true)), 400);",
        &[],
    );
    let found = browser.run("return window.told.splice(0);", &[]);
    found.as_array().into_iter().flatten().filter_map(Value::as_str).map(str::to_owned).collect()
}

#[test]
fn each_reading_is_announced_exactly_once() {
    for (screen, hand) in
        [(Screen::DESK, Hand::Mouse), (Screen::DESK, Hand::Keys), (Screen::PHONE, Hand::Touch)]
    {
        let Some(browser) = Browser::open_page(screen) else { return };
        keep(&browser, DRILL, "", &[]);
        browser.go("?told#/drill");
        browser.wait_until_started();
        let mut work = Work::begun(&browser, hand);
        for which in [Cover::Upper, Cover::UpperInsulation, Cover::UpperShield] {
            work.act(&Action::Cover { which, off: true });
        }
        browser.run(LISTEN, &[]);
        let read = |red: Screw, black: Screw| Action::Meter {
            function: MeterFunction::Volts,
            red: red.into(),
            black: black.into(),
        };
        // Leg to leg, the same once more, and each leg to ground.
        let readings = [
            read(Screw::H1, Screw::H3),
            read(Screw::H1, Screw::H3),
            read(Screw::H1, Screw::Shell),
            read(Screw::H3, Screw::Shell),
        ];
        for reading in &readings {
            work.act(reading);
            let told = told(&browser);
            assert_eq!(told.len(), 1, "{reading:?} by {hand:?} is told as {told:?}");
            assert!(told[0].contains(" V"), "{told:?}");
        }
        // A look is told once too, and what is refused.
        work.act(&Action::Look { at: Place::UpperCompartment });
        assert_eq!(told(&browser).len(), 1);
        work.act(&Action::PressReset);
        assert_eq!(told(&browser).len(), 1);
        // The ear does hear twice what comes twice.
        let twice = "const at = document.querySelector('.live p span').firstChild;
            at.data += ' '; setTimeout(() => { at.data += ' '; }, 50);";
        browser.run(twice, &[]);
        assert_eq!(told(&browser).len(), 2);
        browser.assert_quiet();
    }
}
