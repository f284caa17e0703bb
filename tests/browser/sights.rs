//! Every page, place and section on every screen, in light and dark: accessible, quiet, nothing sticking out,
//! and a picture kept of each.

use bench::{Action, Cover};
use plant::Place;
use serde_json::json;
use tankwright_tests::browser::{Browser, Hand, Screen};

use super::calls::{self, Call};
use super::work::keep;

/// A browser whose device holds the first acts of the call, found as after a crash.
fn with_acts(browser: &Browser, call: &Call, count: usize) {
    let code = drill::code::encode(&call.attempt.order).expect("the call has a code");
    keep(browser, &code, &call.attempt.learner, &call.attempt.actions[..count]);
}

/// Looks at what is shown, in light and dark.
#[track_caller]
fn look(browser: &Browser, screen: Screen, name: &str) {
    for screen in [screen, screen.in_dark()] {
        browser.show_on(screen);
        browser.assert_accessible();
        browser.picture(&format!("{name}-{}", screen.name()));
    }
    browser.show_on(screen);
    let sideways = browser.run("return document.scrollingElement.scrollWidth - innerWidth;", &[]);
    assert_eq!(sideways, json!(0), "{name} sticks out sideways on {}", screen.name());
    let below = browser.run(
        "return document.querySelector('.drill') ? document.scrollingElement.scrollHeight - innerHeight : 0;",
        &[],
    );
    assert_eq!(below, json!(0), "{name} lets the sheet itself scroll on {}", screen.name());
    browser.assert_quiet();
}

fn go(browser: &Browser, below: &str, wait_for: &str) {
    browser.go(below);
    browser.reload();
    browser.wait_until(&format!("document.querySelector(\"{wait_for}\")"));
}

/// Runs the same on a desk, a laptop and a phone.
fn everywhere(show: impl Fn(&Browser, Screen, Hand)) {
    for screens in Screen::ALL {
        let Some(browser) = Browser::open_page(screens[0]) else { return };
        for screen in screens {
            browser.show_on(*screen);
            show(&browser, *screen, if screen.touch { Hand::Touch } else { Hand::Mouse });
        }
    }
}

/// What the heaters cut open on a fault's page are called.
const CUT: &str = "const cut = [...document.querySelectorAll('.atlas-cut svg[role=img]')];
    return cut.map(one => one.getAttribute('aria-label'));";

#[test]
fn the_doors_and_desks() {
    let call = calls::whole();
    let code = drill::code::encode(&call.attempt.order).expect("the call has a code");
    everywhere(|browser, screen, hand| {
        browser.run("localStorage.clear();", &[]);
        go(browser, "#/", "[data-door=practise]");
        look(browser, screen, "doors");
        browser.press_at(hand, ".choose > summary");
        look(browser, screen, "doors-choose");
        go(browser, &format!("#/drill/{code}"), "[data-door=ready]");
        look(browser, screen, "ready");
        go(browser, "#/exam", "[data-door=enter]");
        look(browser, screen, "exam");
        go(browser, "#/instructor", "[data-door=handout]");
        browser.press_at(hand, "input[name=mode][value=exam]");
        look(browser, screen, "instructor");
        go(browser, "#/instructor/attempts", "[data-door=collect]");
        look(browser, screen, "instructor-attempts");
        go(browser, "#/sources", ".sources");
        look(browser, screen, "sources");
        go(browser, "#/sources/shower", ".sources-group[open]");
        look(browser, screen, "sources-found");
        go(browser, "#/drill", "#main");
        look(browser, screen, "no-drill");
    });
}

/// The list, a fault walked beside a sound house with both heaters cut open, one that shows nowhere inside the heater, and
/// the walk through the others, begun and stopped.
#[test]
fn the_atlas() {
    everywhere(|browser, screen, hand| {
        go(browser, "#/atlas", ".atlas-list");
        look(browser, screen, "atlas");
        go(browser, "#/atlas/F53", ".atlas-rows");
        assert_eq!(browser.run(CUT, &[]), json!([]));
        go(browser, "#/atlas/F37", ".atlas-rows");
        let cut = browser.run(CUT, &[]);
        let called = |at: usize| cut[at].as_str().expect("a drawing has a name").to_owned();
        assert_eq!(cut.as_array().map(Vec::len), Some(2), "{cut}");
        assert!(called(0).starts_with("Sound: ") && called(1).starts_with("With this fault: "), "{cut}");
        look(browser, screen, "atlas-cut");
        go(browser, "#/atlas/F13", ".atlas-rows");
        look(browser, screen, "atlas-fault");
        browser.press_at(hand, "[data-act=alike]");
        browser.wait_until("document.querySelector('.atlas progress')?.value > 1");
        browser.press_at(hand, ".atlas button.quiet");
        browser.wait_until("!document.querySelector('.atlas progress')");
    });
}

#[test]
fn the_drill_at_every_place() {
    let call = calls::whole();
    let found = call.attempt.actions.iter().position(|act| matches!(act, Action::Finding { .. }));
    everywhere(|browser, screen, hand| {
        with_acts(browser, &call, 0);
        go(browser, "#/drill", ".drill");
        look(browser, screen, "drill-start");
        with_acts(browser, &call, found.expect("the call has a finding"));
        go(browser, "#/drill", ".drill");
        if screen.touch {
            for tab in ["Call", "Meter", "Kit", "Log", "Heater"] {
                browser.press_at(hand, &format!("[data-tab='{tab}']"));
                look(browser, screen, &format!("drill-{tab}").to_lowercase());
            }
        } else {
            look(browser, screen, "drill");
        }
        // This house has no box in the line, and none is drawn.
        let spots = "document.querySelectorAll('.spot[data-place=in-line-box]').length";
        assert_eq!(browser.run(&format!("return {spots}"), &[]), 0);
        let there = |place: &&Place| !matches!(place, Place::Customer | Place::InLineBox);
        for place in Place::ALL.iter().filter(there) {
            browser.press_at(hand, &format!(".spot[data-place={}] .hit", place.name()));
            browser.reach(hand, &format!("[data-at={}]", place.name()));
            look(browser, screen, &format!("place-{}", place.name()));
        }
        let dialogs = [
            ("hint", "[data-act=hint]"),
            ("hand-over", "[data-act=hand-over-asked]"),
            ("call", "[data-act=call-asked]"),
            ("here", "[data-act=here]"),
        ];
        for (name, button) in dialogs {
            browser.press_at(hand, button);
            browser.css("dialog[open]");
            look(browser, screen, &format!("dialog-{name}"));
            browser.key("Escape");
            browser.wait_until("!document.querySelector('dialog[open]')");
        }
    });
}

#[test]
fn the_debrief_in_every_section() {
    for (name, call) in [("clean", calls::whole()), ("careless", calls::careless())] {
        everywhere(|browser, screen, hand| {
            with_acts(browser, &call, call.attempt.actions.len());
            go(browser, "#/debrief", ".debrief");
            let name = format!("debrief-{name}");
            if screen.touch {
                for tab in ["account", "inside", "steps", "report"] {
                    browser.press_at(hand, &format!("[data-tab={tab}]"));
                    look(browser, screen, &format!("{name}-{tab}"));
                }
            } else {
                look(browser, screen, &name);
                browser.picture_of_all(&format!("{name}-all-{}", screen.name()));
            }
            browser.press_at(hand, "[data-act=clear-asked]");
            browser.css("dialog[open]");
            look(browser, screen, &format!("{name}-clear"));
        });
    }
}

/// A drop at every fitting that can be seen wet: it is on the drawing once it was seen and not before, and it shows: the
/// picture of the place is another one without it.
#[test]
fn a_drop_hangs_where_a_fitting_was_seen_wet() {
    let Some(browser) = Browser::open_page(Screen::DESK) else { return };
    let bare = [Cover::Upper, Cover::UpperInsulation, Cover::UpperShield]
        .into_iter()
        .chain([Cover::Lower, Cover::LowerInsulation, Cover::LowerShield])
        .map(|which| Action::Cover { which, off: true });
    let off = [Action::Breaker { slot: 2, on: false }, Action::Lock { slot: 2, on: true }];
    let before: Vec<Action> = off.into_iter().chain(bare).collect();
    let both = [Place::UpperCompartment, Place::LowerCompartment];
    let wet: [(&str, &[Place]); 5] = [
        ("F03", &[Place::Drain]),
        ("F47", &[Place::Relief]),
        ("F50", &both),
        ("F51", &[Place::Drain]),
        ("F52", &[Place::HeaterTop]),
    ];
    for (fault, places) in wet {
        let drill = format!(r#"{{"seed": 7, "fault": "{fault}", "heater": "plain-40", "mode": "solo"}}"#);
        keep(&browser, &drill, "", &before);
        browser.go(&format!("?dry-{fault}#/drill"));
        browser.wait_until(&format!("document.querySelectorAll('ol.log > li').length === {}", before.len()));
        assert_eq!(browser.all_css(DROP).len(), 0, "{fault}: nobody has looked yet");
        let looked: Vec<Action> =
            before.iter().cloned().chain(places.iter().map(|at| Action::Look { at: *at })).collect();
        keep(&browser, &drill, "", &looked);
        browser.go(&format!("?wet-{fault}#/drill"));
        browser.wait_until(&format!("document.querySelectorAll('ol.log > li').length === {}", looked.len()));
        let drops = browser.all_css(DROP);
        assert!(!drops.is_empty(), "{fault}: no drop on the drawing");
        for (at, drop) in drops.iter().enumerate() {
            let [x, y, width, height] = drop.bounds();
            assert!(width > 2.0 && height > 2.0, "{fault}: {width} by {height}");
            let around = [x - 6.0, y - 6.0, width + 12.0, height + 12.0];
            let with = browser.picture_of(around, &format!("drop-{fault}-{at}"));
            browser.run("arguments[0].style.visibility = 'hidden';", &[drop.reference()]);
            let without = browser.picture_of(around, &format!("drop-{fault}-{at}-without"));
            assert_ne!(
                std::fs::read(with).unwrap(),
                std::fs::read(without).unwrap(),
                "{fault}: drop {at} is not seen"
            );
            browser.run("arguments[0].style.visibility = '';", &[drop.reference()]);
        }
        browser.picture(&format!("drops-{fault}"));
    }
    browser.assert_quiet();
}

/// A drop on the drawing.
const DROP: &str = ".sheet path.water[d$='q-9 13 0 14t0 -14Z']";
