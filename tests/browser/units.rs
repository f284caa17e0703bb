//! The other units: one button turns every reading on the screen from one kind to the other and back, on a desk and a phone.

use bench::{Action, Probe, Writing};
use plant::{Screw, Tap};
use quantity::Volume;
use tankwright_tests::browser::{Browser, Hand, Screen};

use super::work::keep;

const DRILL: &str = r#"{"seed": 7, "fault": "F01", "heater": "plain-40", "mode": "coached"}"#;

/// What the log and the plate say.
fn said(browser: &Browser) -> String {
    let texts = "return [...document.querySelectorAll('ol.log > li, .call td, .live')].map((one) => one.textContent).join('\\n');";
    browser.run(texts, &[]).as_str().unwrap_or_default().to_owned()
}

fn has_all(text: &str, wanted: &[&str], unwanted: &[&str]) {
    for one in wanted {
        assert!(text.contains(one), "{one:?} is missing in {text}");
    }
    for one in unwanted {
        assert!(!text.contains(one), "{one:?} is left in {text}");
    }
}

#[test]
fn one_button_turns_every_reading_into_the_other_units_and_back() {
    for screen in [Screen::DESK, Screen::PHONE] {
        let Some(browser) = Browser::open_page(screen) else { return };
        let hand = if screen.touch { Hand::Touch } else { Hand::Mouse };
        let acts = [
            Action::Read { what: Writing::Plate },
            Action::Bucket { tap: Tap::Kitchen, volume: Volume::gallons(5.0) },
            Action::Thermometer { at: Probe::Metal { point: Screw::Pipe.into() } },
        ];
        keep(&browser, DRILL, "", &acts);
        browser.go("?units#/drill");
        browser.wait_until("document.querySelectorAll('ol.log > li').length === 3");
        let before = said(&browser);
        has_all(&before, &["°F", "gal"], &["°C"]);
        browser.press_at(hand, "[data-act=units]");
        browser.wait_until("document.querySelector('ol.log')?.textContent.includes('°C')");
        let other = said(&browser);
        has_all(&other, &["°C", " L"], &["°F", "gal"]);
        browser.picture(&format!("units-si-{}", screen.name()));
        // It stays so after the page is loaded again, and one press more takes it back.
        browser.reload();
        browser.wait_until("document.querySelector('ol.log')?.textContent.includes('°C')");
        browser.press_at(hand, "[data-act=units]");
        browser.wait_until("document.querySelector('ol.log')?.textContent.includes('°F')");
        assert_eq!(said(&browser), before);
        browser.assert_quiet();
    }
}
