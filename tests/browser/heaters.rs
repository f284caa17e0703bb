//! Every heater on every screen, in light and dark: its drawing and its details show what that heater has, nothing
//! lies over anything else, nothing is cut off, nothing in the console; a picture kept of each.

use bench::{Action, Cover, Mode, Writing};
use drill::Order;
use plant::{BoxKind, HeaterModel, Level, Place};
use serde_json::{Value, json};
use tankwright_tests::browser::{Browser, Hand, Screen};

use super::work::keep;

/// Words of a drawing that lie over other words, stick out of it, or are cut off beside it.
const AMISS: &str = "
const found = [];
for (const svg of document.querySelectorAll('svg.sheet, svg.detail')) {
    const frame = svg.getBoundingClientRect();
    if (!frame.width) continue;
    const words = [...svg.querySelectorAll('text')].filter((one) => one.textContent.trim());
    const boxes = words.map((one) => one.getBoundingClientRect());
    words.forEach((one, at) => {
        const a = boxes[at];
        if (a.left < frame.left - 1 || a.right > frame.right + 1 || a.top < frame.top - 1 || a.bottom > frame.bottom + 1) {
            found.push(`'${one.textContent}' sticks out`);
        }
        for (let other = at + 1; other < words.length; other += 1) {
            const b = boxes[other];
            const across = Math.min(a.right, b.right) - Math.max(a.left, b.left);
            const down = Math.min(a.bottom, b.bottom) - Math.max(a.top, b.top);
            if (across > 1 && down > 3.5) found.push(`'${one.textContent}' over '${words[other].textContent}'`);
        }
    });
}
for (const one of document.querySelectorAll('button, h2, h3, td, th, .lcd')) {
    if (one.offsetParent && one.scrollWidth > one.clientWidth + 1 && one.clientWidth) {
        found.push(`'${one.textContent}' is cut off`);
    }
}
return found;";

/// The heater's order; three of the houses have a box in the line.
fn order(model: HeaterModel) -> Order {
    let in_line = match model {
        HeaterModel::Short30 => Some(BoxKind::FusedSwitch),
        HeaterModel::Tall50At277 => Some(BoxKind::FusedSwitch),
        HeaterModel::Wide80 => Some(BoxKind::Timer),
        HeaterModel::Both50 => Some(BoxKind::UtilityRelay),
        _ => None,
    };
    (0..4000)
        .map(|seed| Order { heater: Some(model), ..Order::chance(seed, Mode::Solo) })
        .find(|order| drill::settle(order).is_ok_and(|settled| settled.setting.in_line == in_line))
        .expect("some seed draws it")
}

/// Everything open that the heater has, the plate and the dials read.
fn opened(model: HeaterModel, boxed: bool) -> Vec<Action> {
    let covers = [
        (Cover::PanelFront, true),
        (Cover::BoxDoor, boxed),
        (Cover::JunctionBox, true),
        (Cover::Upper, true),
        (Cover::UpperInsulation, true),
        (Cover::UpperShield, true),
        (Cover::Lower, model.plate().has(Level::Lower)),
        (Cover::LowerInsulation, model.plate().has(Level::Lower)),
        (Cover::LowerShield, model.plate().has(Level::Lower)),
    ];
    let off = covers.into_iter().filter(|(_, there)| *there);
    let looks = [Place::LoadCenter, Place::UpperCompartment].map(|at| Action::Look { at });
    [Action::Breaker { slot: 2, on: false }, Action::Read { what: Writing::Plate }]
        .into_iter()
        .chain(off.map(|(which, _)| Action::Cover { which, off: true }))
        .chain([Action::Read { what: Writing::Dials }])
        .chain(looks)
        .collect()
}

#[track_caller]
fn look(browser: &Browser, screen: Screen, name: &str) {
    for screen in [screen, screen.in_dark()] {
        browser.show_on(screen);
        let amiss = browser.run(AMISS, &[]);
        assert_eq!(amiss, json!([]), "{name} on {}", screen.name());
        browser.picture(&format!("{name}-{}", screen.name()));
    }
    browser.show_on(screen);
    browser.assert_quiet();
}

fn count(browser: &Browser, selector: &str) -> Value {
    browser.run("return document.querySelectorAll(arguments[0]).length;", &[json!(selector)])
}

fn shown(browser: &Browser, selector: &str) -> Value {
    let script =
        "const found = document.querySelector(arguments[0]); return !!found && found.offsetParent !== null;";
    browser.run(script, &[json!(selector)])
}

#[test]
fn every_heater_is_drawn_as_it_is() {
    for screens in Screen::ALL {
        let Some(browser) = Browser::open_page(screens[0]) else { return };
        for &model in HeaterModel::ALL {
            let order = order(model);
            let made = drill::make(&order).expect("it can be made");
            let wiring = &made.job.home.plant.wiring;
            let actions = opened(model, wiring.boxed);
            let drill = serde_json::to_string(&order).expect("an order");
            keep(&browser, &drill, "", &actions);
            browser.go("#/drill");
            browser.reload();
            browser.wait_until("document.querySelector('.drill')");
            for &screen in screens {
                let hand = if screen.touch { Hand::Touch } else { Hand::Mouse };
                browser.show_on(screen);
                if screen.touch {
                    browser.press_at(hand, "[data-tab='Heater']");
                }
                look(&browser, screen, &format!("heater-{model}"));
                if screen == Screen::DESK {
                    browser.assert_accessible();
                }
                for place in [
                    Place::UpperCompartment,
                    Place::LowerCompartment,
                    Place::JunctionBox,
                    Place::InLineBox,
                    Place::LoadCenter,
                ] {
                    let there = match place {
                        Place::LowerCompartment => model.plate().has(Level::Lower),
                        Place::InLineBox => wiring.boxed,
                        _ => true,
                    };
                    let spot = format!(".spot[data-place={}]", place.name());
                    assert_eq!(count(&browser, &spot), json!(usize::from(there)), "{model} {place}");
                    if !there {
                        continue;
                    }
                    browser.press_at(hand, &format!("{spot} .hit"));
                    browser.reach(hand, &format!("[data-at={}]", place.name()));
                    // Its points come a frame after its parts.
                    browser.wait_until("!document.querySelector('.detail.filling')");
                    let screws = plant::Screw::ALL.iter().filter(|one| one.place() == place);
                    for screw in screws {
                        let drawn = count(&browser, &format!(".detail [data-point='{screw}']"));
                        let second = matches!(screw, plant::Screw::S1 | plant::Screw::S2);
                        let has = wiring.has_screw(*screw) && (!second || !wiring.second_source);
                        if !second || has {
                            assert_eq!(drawn, json!(usize::from(has)), "{model} {screw}");
                        }
                    }
                    look(&browser, screen, &format!("heater-{model}-{place}"));
                    if screen == Screen::DESK {
                        browser.assert_accessible();
                    }
                    // Where the place covers the drawing a button leads back to it.
                    if shown(&browser, "[data-act=whole-drawing]") == json!(true) {
                        browser.press_at(hand, "[data-act=whole-drawing]");
                    }
                }
            }
        }
    }
}
