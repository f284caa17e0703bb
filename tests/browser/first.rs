//! Who is here for the first time: both guided calls worked to their end by keyboard, following nothing but what the page
//! marks; the key that says what can be done here; the terms; the inside view.

use serde_json::{Value, json};
use tankwright_tests::browser::{Browser, Hand, Screen};

use super::work::keep;

/// More steps by keyboard than either call takes.
const MOST: usize = 420;

#[track_caller]
fn look(browser: &Browser, screen: Screen, name: &str) {
    browser.picture(&format!("{name}-{}", screen.name()));
    assert_eq!(browser.amiss(), json!([]), "{name} on {}", screen.name());
    let sideways = browser.run("return document.scrollingElement.scrollWidth - innerWidth;", &[]);
    assert_eq!(sideways, json!(0), "{name} sticks out sideways on {}", screen.name());
    browser.assert_accessible();
    browser.assert_quiet();
}

fn text_of(browser: &Browser, selector: &str) -> String {
    let found =
        browser.run("return document.querySelector(arguments[0])?.textContent ?? '';", &[selector.into()]);
    found.as_str().unwrap_or_default().to_owned()
}

/// Goes where the guide shows and does what it marks there.
fn next_step(browser: &Browser) {
    browser.press_at(Hand::Keys, "[data-act=guide-show]");
    browser.wait_until("document.activeElement.hasAttribute('data-next')");
    let chosen = browser.run(
        "const at = document.activeElement; return [at.tagName, at.getAttribute('data-next'), at.type ?? ''];",
        &[],
    );
    let field = |at: usize| chosen[at].as_str().unwrap_or_default().to_owned();
    if field(0) == "SELECT" {
        let list = browser.css("[data-next]");
        browser.choose(Hand::Keys, &list, &field(1));
    } else if field(2) == "checkbox" {
        browser.key("Space");
    } else {
        browser.key("Enter");
    }
}

#[test]
fn the_first_call_is_worked_to_its_end_by_keyboard() {
    let stages = ["heard", "off", "locked", "dead", "read", "named", "changed", "on", "proved", "over"];
    worked_by_keyboard("first", &stages);
}

#[test]
fn the_second_call_is_worked_to_its_end_by_keyboard() {
    let stages =
        ["heard", "off", "locked", "dead", "read", "named", "changed", "refilled", "on", "proved", "over"];
    worked_by_keyboard("second", &stages);
}

fn worked_by_keyboard(call: &str, expected: &[&str]) {
    let screen = Screen::DESK;
    let Some(browser) = Browser::open_page(screen) else { return };
    browser.press_at(Hand::Keys, &format!("[data-act={call}]"));
    browser.wait_until("document.querySelector('.guide-do')");
    look(&browser, screen, &format!("{call}-begun"));
    let mut stages = Vec::new();
    for _ in 0..MOST {
        let stage = browser.run("return document.querySelector('.guide')?.dataset.stage ?? '';", &[]);
        if stages.last() != Some(&stage) {
            stages.push(stage);
        }
        next_step(&browser);
        if browser.has("dialog[open] [data-act='hand-over']") {
            browser.press_at(Hand::Keys, "dialog[open] [data-act='hand-over']");
            break;
        }
    }
    assert_eq!(Value::from(stages), json!(expected));
    browser.press_at(Hand::Keys, ".over a");
    for (account, points) in [("safety", 40), ("finding", 25), ("repair", 20), ("finish", 15)] {
        let shown = browser.css(&format!("[data-account={account}] .points"));
        let text = browser.run("return arguments[0].textContent;", &[shown.reference()]);
        assert_eq!(text, format!("{points} of {points}"), "{account}");
    }
    if call == "first" {
        // What comes next is the call in which the tank is drained: its guide goes through one stage more.
        browser.press_at(Hand::Keys, "[data-act=next]");
        browser.wait_until("document.querySelectorAll('.guide-stages > *').length === 11");
    }
    browser.assert_quiet();
}

#[test]
fn the_guide_is_put_away_and_brought_back_and_the_first_call_fits_every_screen() {
    for screens in Screen::ALL {
        let Some(browser) = Browser::open_page(screens[0]) else { return };
        browser.run("document.querySelector('[data-act=first]').click();", &[]);
        browser.wait_until("document.querySelector('.guide')");
        for screen in screens.iter().flat_map(|screen| [*screen, screen.in_dark()]) {
            browser.show_on(screen);
            look(&browser, screen, "first");
        }
        // The reason is folded away until it is asked for.
        assert!(!browser.has(".guide-why"));
        browser.press_at(Hand::Keys, "[data-act=guide-why]");
        browser.wait_until("document.querySelector('.guide-why')?.textContent.length > 20");
        for screen in screens {
            browser.show_on(*screen);
            look(&browser, *screen, "first-why");
        }
        browser.press_at(Hand::Keys, "[data-act=guide-away]");
        browser.wait_until("!document.querySelector('.guide')");
        browser.press_at(Hand::Keys, "[data-act=guide-back]");
        browser.wait_until("document.querySelector('.guide')");
    }
}

const COACHED: &str = r#"{"seed": 7, "fault": "F01", "heater": "plain-40", "mode": "coached"}"#;

fn open_at(browser: &Browser, place: &str) {
    keep(browser, COACHED, "", &[]);
    browser.go("#/drill");
    browser.reload();
    browser.wait_until("document.querySelector('.drill')");
    browser.run("document.querySelector(`[data-go=${arguments[0]}]`).click();", &[place.into()]);
    browser.wait_until(&format!("document.querySelector('[data-at={place}]')"));
}

#[test]
fn a_key_says_what_can_be_done_here_and_does_it() {
    for screen in [Screen::DESK, Screen::PHONE] {
        let Some(browser) = Browser::open_page(screen) else { return };
        open_at(&browser, "upper-compartment");
        browser.key("?");
        browser.wait_until("document.querySelector('.here-sheet[open] [data-key=\"1\"]')");
        look(&browser, screen, "here");
        let refused = text_of(&browser, ".here-list");
        assert!(refused.contains("upper cover"), "{refused}");
        browser.key("1");
        browser.wait_until("!document.querySelector('.here-sheet[open]')");
        browser.wait_until("localStorage.getItem('tankwright.act.1')");
        // The button does the same, and the key can be switched off.
        browser.press_at(if screen.touch { Hand::Touch } else { Hand::Mouse }, "[data-act=here]");
        browser.wait_until("document.querySelector('.here-sheet[open]')");
        browser.press_at(Hand::Keys, "[data-field=here-key]");
        browser.key("Escape");
        browser.wait_until("!document.querySelector('.here-sheet[open]')");
        browser.key("?");
        browser.key("Tab");
        assert!(!browser.has(".here-sheet[open]"), "the key is off");
        browser.assert_quiet();
    }
}

/// Whether the sheet is open a moment later.
const OPENED: &str = "return new Promise((done) => \
    setTimeout(() => done(Boolean(document.querySelector('.here-sheet[open]'))), 300));";

#[test]
fn every_page_says_what_can_be_done_there() {
    for screen in [Screen::DESK, Screen::PHONE] {
        let Some(browser) = Browser::open_page(screen) else { return };
        for (page, offers) in [
            ("", "Your first call"),
            ("drill/K7QD-3M2A", "name or number"),
            ("debrief", "Four accounts"),
            ("instructor", "Hand out a drill"),
            ("exam", "The exam is over"),
            ("sources", "Kind of source"),
            ("atlas", "Look for a fault"),
            ("glossary", "Look for"),
            ("show", "Acts"),
        ] {
            let name = page.split('/').next().filter(|name| !name.is_empty()).unwrap_or("doors");
            browser.go(&format!("?{name}#/{page}"));
            browser.wait_until("document.querySelector('main h1:not(.unseen)')");
            // A key that comes while the page is still being put up passes by, as for somebody who is that quick.
            let opened = (0..20).any(|_| {
                browser.key("?");
                browser.run(OPENED, &[]) == true
            });
            assert!(opened, "{page}");
            browser.wait_until("document.querySelector('.here-sheet[open] .here-list')");
            let said = text_of(&browser, ".here-sheet[open]");
            assert!(said.contains(offers), "{page}: {said}");
            look(&browser, screen, &format!("here-{name}"));
            browser.key("Escape");
            browser.wait_until("!document.querySelector('.here-sheet[open]')");
        }
    }
}

#[test]
fn every_term_has_an_address_and_is_opened_where_it_occurs() {
    for screen in [Screen::DESK, Screen::PHONE] {
        let Some(browser) = Browser::open_page(screen) else { return };
        browser.go("#/glossary/dip-tube");
        browser.wait_until("document.querySelectorAll('.terms-list dt').length >= 60");
        browser.wait_until("document.querySelector('#term-dip-tube.asked')");
        look(&browser, screen, "terms");
        open_at(&browser, "heater-top");
        browser.wait_until("document.querySelector('.place a.term')");
        browser.press_at(Hand::Keys, ".place a.term");
        browser.wait_until("document.querySelector('dialog[open] .term-means')?.textContent.length > 20");
        browser.assert_accessible();
        browser.key("Escape");
        browser.wait_until("!document.querySelector('dialog[open]')");
        let back = browser.run("return document.activeElement.className;", &[]);
        assert_eq!(back, json!("term"), "the focus goes back to the word");
        browser.assert_quiet();
    }
}

#[test]
fn a_room_sees_the_inside_while_acts_are_played() {
    for screens in Screen::ALL {
        let Some(browser) = Browser::open_page(screens[0]) else { return };
        open_at(&browser, "load-center");
        browser.go("#/show");
        browser.wait_until("document.querySelector('.show .section svg')");
        for screen in screens.iter().flat_map(|screen| [*screen, screen.in_dark()]) {
            browser.show_on(screen);
            look(&browser, screen, "show");
        }
        browser.run("document.querySelector(`[data-act='breaker on=false slot=2']`).click();", &[]);
        browser.wait_until("document.querySelector('.show-state:not(.live)')");
    }
}

/// Without the rest of the book a first call can be worked; where the guide would stand the page says what to do.
#[test]
fn the_guide_says_when_its_words_cannot_be_had() {
    let Some(browser) = Browser::blank(Screen::PHONE) else { return };
    let refuse = "
        const honest = window.fetch;
        window.fetch = (address, ...more) =>
            String(address).includes('en-later') ? Promise.resolve(new Response('', { status: 404 })) : honest(address, ...more);";
    browser.command("Page.addScriptToEvaluateOnNewDocument", json!({ "source": refuse }));
    browser.go("");
    browser.wait_until_started();
    browser.press_at(Hand::Mouse, "[data-act=first]");
    browser.wait_until("document.querySelector('.guide [role=status]')");
    let voice = words::Voice::english(words::Units::Customary);
    browser.wait_for_text(&voice.text("shell-words-failed"));
    browser.wait_until("document.querySelector('.asks [data-act]')");
    look(&browser, Screen::PHONE, "first-without-words");
    browser.go("#/glossary");
    browser.wait_for_text(&voice.text("shell-words-failed"));
    look(&browser, Screen::PHONE, "glossary-without-words");
}
