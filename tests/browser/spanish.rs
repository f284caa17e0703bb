//! The page in Spanish: chosen by one button, kept on the device, worked by roles and names alone; on a desk and a
//! phone no text is cut, none lies over another, none is left in English; a picture kept of each.

use bench::{Action, Cover, Writing};
use plant::{HeaterModel, Place};
use serde_json::json;
use tankwright_tests::browser::{Browser, Hand, Screen};
use words::{Language, Voice};

use super::speech::voice;
use super::work::keep;

/// The Spanish sentences.
fn spanish() -> Voice {
    voice(Language::Spanish)
}

#[track_caller]
fn look(browser: &Browser, screen: Screen, name: &str) {
    let amiss = browser.amiss();
    browser.picture(&format!("es-{name}-{}", screen.name()));
    assert_eq!(amiss, json!([]), "{name} on {}", screen.name());
    let sideways = browser.run("return document.scrollingElement.scrollWidth - innerWidth;", &[]);
    assert_eq!(sideways, json!(0), "{name} sticks out sideways on {}", screen.name());
    browser.assert_accessible();
    browser.assert_quiet();
}

fn go(browser: &Browser, below: &str, wait_for: &str) {
    browser.go(below);
    browser.reload();
    browser.wait_until(&format!("document.querySelector(\"{wait_for}\")"));
}

fn press(browser: &Browser, screen: Screen, role: &str, name: &str) {
    let element = browser.role(role, name);
    if screen.touch { element.tap() } else { element.click() }
}

/// Presses the button of another language, and sees that the page is in it and stays in it.
fn choose_spanish(browser: &Browser, screen: Screen) {
    browser.run("localStorage.clear();", &[]);
    go(browser, "#/", "[data-door=practise]");
    press(browser, screen, "button", "Español");
    browser.wait_until("document.documentElement.lang === 'es-US'");
    browser.role("button", "English");
    assert_eq!(browser.run("return document.activeElement.dataset.act ?? '';", &[]), json!("language"));
    browser.reload();
    browser.role("heading", &spanish().text("page-doors-title"));
    let doors = spanish().text("window-doors");
    browser.wait_until(&format!("document.title === '{doors} · Tankwright'"));
}

#[test]
fn the_first_pages_in_spanish() {
    for screen in [Screen::DESK, Screen::PHONE] {
        let Some(browser) = Browser::open_page(screen) else { return };
        let hand = if screen.touch { Hand::Touch } else { Hand::Mouse };
        choose_spanish(&browser, screen);
        look(&browser, screen, "doors");
        browser.press_at(hand, ".choose > summary");
        look(&browser, screen, "doors-choose");
        go(&browser, "#/exam", "[data-door=enter]");
        look(&browser, screen, "exam");
        go(&browser, "#/instructor", "[data-door=handout]");
        look(&browser, screen, "instructor");
        go(&browser, "#/sources", ".sources");
        look(&browser, screen, "sources");
        press(&browser, screen, "button", "English");
        browser.wait_until("document.documentElement.lang === 'en-US'");
        browser.role("button", "Español");
    }
}

/// The terms, the atlas, a sheet before the start, the first visit with its guide, what can be done here, every dialog of
/// the drill, the room's view, and clearing the device.
#[test]
fn the_other_pages_in_spanish() {
    let call = super::calls::whole();
    let code = drill::code::encode(&call.attempt.order).expect("the call has a code");
    for screen in [Screen::DESK, Screen::PHONE] {
        let Some(browser) = Browser::open_page(screen) else { return };
        let hand = if screen.touch { Hand::Touch } else { Hand::Mouse };
        choose_spanish(&browser, screen);
        let pages = [
            ("#/glossary/dip-tube", "#term-dip-tube.asked", "terms"),
            ("#/atlas", ".atlas-list", "atlas"),
            ("#/atlas/F13", ".atlas-rows", "atlas-fault"),
            (&format!("#/drill/{code}"), "[data-door=ready]", "ready"),
        ];
        for (below, there, name) in pages {
            go(&browser, below, there);
            look(&browser, screen, name);
        }
        go(&browser, "#/", "[data-act=first]");
        browser.press_at(hand, "[data-act=first]");
        browser.wait_until("document.querySelector('.guide [data-act=guide-show]')");
        look(&browser, screen, "first");
        for (button, name) in [
            ("[data-act=here]", "here"),
            ("[data-act=hint]", "hint"),
            ("[data-act=call-asked]", "call"),
            ("[data-act=hand-over-asked]", "hand-over"),
        ] {
            browser.press_at(hand, button);
            browser.css("dialog[open]");
            look(&browser, screen, name);
            browser.key("Escape");
            browser.wait_until("!document.querySelector('dialog[open]')");
        }
        // At a place, with what is refused there and why.
        browser.run("document.querySelector('[data-go=upper-compartment]').click();", &[]);
        browser.wait_until("document.querySelector('[data-at=upper-compartment]')");
        browser.press_at(hand, "[data-act=here]");
        browser.css(".here-sheet[open]");
        look(&browser, screen, "here-place");
        browser.key("Escape");
        go(&browser, "#/show", ".show .section svg");
        look(&browser, screen, "show");
        keep(&browser, &code, "", &call.attempt.actions);
        browser.run("localStorage.setItem('tankwright.language', 'es');", &[]);
        go(&browser, "#/debrief", ".debrief");
        browser.press_at(hand, "[data-act=clear-asked]");
        browser.css("dialog[open]");
        look(&browser, screen, "clear");
    }
}

/// A job worked by what a screen reader says, in Spanish: the customer, the plate, the load center, a reading.
#[test]
fn a_drill_by_roles_and_names_in_spanish() {
    let v = spanish();
    for screen in [Screen::DESK, Screen::PHONE] {
        let Some(browser) = Browser::open_page(screen) else { return };
        choose_spanish(&browser, screen);
        let drill = r#"{"seed": 7, "fault": "F01", "heater": "plain-40", "mode": "coached"}"#;
        keep(&browser, drill, "", &[]);
        browser.run("localStorage.setItem('tankwright.language', 'es');", &[]);
        go(&browser, "#/drill", ".drill");
        let act = |role: &str, name: &str| press(&browser, screen, role, name);
        let section = |id: &str| {
            if screen.touch {
                act("button", &v.text(id));
            }
        };
        let wait = |text: &str| {
            browser.wait_for_text(text);
        };
        look(&browser, screen, "drill-start");
        act("button", &v.question(plant::household::Question::HowMuch));
        act("button", &v.text("job-read-plate"));
        wait(&v.text("job-plate-pressure"));
        act("button", &v.text("job-tell-household"));
        look(&browser, screen, "drill-asked");
        section("tab-kit");
        act("button", &v.text("kit-gloves"));
        look(&browser, screen, "drill-kit");
        section("tab-heater");
        browser.press_at(
            if screen.touch { Hand::Touch } else { Hand::Mouse },
            ".spot[data-place=load-center] .hit",
        );
        act("button", &v.text("do-read-directory"));
        act("button", &v.filled("do-breaker-off", &[("slot", 1u32.into())]));
        look(&browser, screen, "drill-load-center");
        section("tab-log");
        wait(&v.filled("act-breaker-off", &[("slot", 1u32.into())]));
        look(&browser, screen, "drill-log");
        act("button", &v.text(if screen.touch { "job-hint-short" } else { "job-hint" }));
        look(&browser, screen, "drill-hint");
        browser.key("Escape");
    }
}

/// Everything open on a heater with thermostats and on one with a board: the most words that a drawing carries.
#[test]
fn drawings_and_places_in_spanish() {
    for screen in [Screen::DESK, Screen::PHONE] {
        let Some(browser) = Browser::open_page(screen) else { return };
        let hand = if screen.touch { Hand::Touch } else { Hand::Mouse };
        choose_spanish(&browser, screen);
        for model in [HeaterModel::Plain40, HeaterModel::Board50, HeaterModel::Small20] {
            let covers = [
                Cover::PanelFront,
                Cover::JunctionBox,
                Cover::Upper,
                Cover::UpperInsulation,
                Cover::UpperShield,
            ];
            let actions: Vec<Action> =
                [Action::Look { at: Place::LoadCenter }, Action::Read { what: Writing::Plate }]
                    .into_iter()
                    .chain(covers.map(|which| Action::Cover { which, off: true }))
                    .collect();
            let drill = format!(r#"{{"seed": 11, "heater": "{model}", "mode": "solo"}}"#);
            keep(&browser, &drill, "", &actions);
            browser.run("localStorage.setItem('tankwright.language', 'es');", &[]);
            go(&browser, "#/drill", ".drill");
            if screen.touch {
                browser.press_at(hand, "[data-tab='Heater']");
            }
            look(&browser, screen, &format!("heater-{model}"));
            let places = Place::ALL.iter().filter(|at| !matches!(at, Place::Customer));
            for place in places.filter(|at| browser.has(&format!(".spot[data-place={}]", at.name()))) {
                browser.press_at(hand, &format!(".spot[data-place={}] .hit", place.name()));
                browser.reach(hand, &format!("[data-at={}]", place.name()));
                look(&browser, screen, &format!("heater-{model}-{place}"));
                if browser
                    .run("return !!document.querySelector('[data-act=whole-drawing]')?.offsetParent;", &[])
                    == json!(true)
                {
                    browser.press_at(hand, "[data-act=whole-drawing]");
                }
            }
        }
    }
}

/// The debrief of a careless job: every sentence of it from the Spanish book.
#[test]
fn the_debrief_in_spanish() {
    let call = super::calls::careless();
    let code = drill::code::encode(&call.attempt.order).expect("the call has a code");
    for screen in [Screen::DESK, Screen::PHONE] {
        let Some(browser) = Browser::open_page(screen) else { return };
        let hand = if screen.touch { Hand::Touch } else { Hand::Mouse };
        choose_spanish(&browser, screen);
        keep(&browser, &code, &call.attempt.learner, &call.attempt.actions);
        browser.run("localStorage.setItem('tankwright.language', 'es');", &[]);
        go(&browser, "#/debrief", ".debrief");
        browser.wait_for_text(&spanish().text("rule-household-not-told"));
        if !screen.touch {
            look(&browser, screen, "debrief");
            continue;
        }
        for tab in ["account", "inside", "steps", "report"] {
            browser.press_at(hand, &format!("[data-tab={tab}]"));
            look(&browser, screen, &format!("debrief-{tab}"));
        }
    }
}

/// All words of the page, shown by now or not.
fn words_of(browser: &Browser) -> serde_json::Value {
    const WORDS: &str = "
        const all = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
        const found = [];
        while (all.nextNode()) if (all.currentNode.data.trim()) found.push(all.currentNode.data);
        return found;";
    browser.run(WORDS, &[])
}

/// What is open when another language or other units are chosen says the same as when it is opened in them.
#[test]
fn what_is_open_follows_the_language_and_the_units() {
    let call = super::calls::careless();
    let code = drill::code::encode(&call.attempt.order).expect("the call has a code");
    let Some(browser) = Browser::open_page(Screen::DESK) else { return };
    keep(&browser, &code, &call.attempt.learner, &call.attempt.actions);
    for (below, there) in
        [("#/debrief", ".debrief:not(.filling)"), ("#/atlas/F13", ".atlas-rows"), ("#/drill", ".over a")]
    {
        for choice in ["language", "units", "language", "units"] {
            go(&browser, below, there);
            browser.press_at(Hand::Mouse, &format!("[data-act={choice}]"));
            browser.run_until_answered("setTimeout(arguments[arguments.length - 1], 1000);", &[]);
            let followed = words_of(&browser);
            go(&browser, below, there);
            browser.run_until_answered("setTimeout(arguments[arguments.length - 1], 1000);", &[]);
            assert!(followed == words_of(&browser), "{below} after {choice}");
        }
    }
    browser.assert_quiet();
}
