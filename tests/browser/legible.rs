//! Every page on every size, in both languages: no text is cut or lies over another and nothing is read by scrolling to
//! two sides, down to 320 pixels, which is a desk's screen at 400 %; a picture of each in forced colours, none of whose
//! words vanish; on a phone everything pressed is as large as a finger; nothing moves for who asks for less motion.

use bench::{Action, Cover};
use plant::{HeaterModel, Place};
use serde_json::{Value, json};
use tankwright_tests::browser::{Browser, Screen};

use super::calls;
use super::work::{COMPARTMENTS, keep};

/// Sizes on which words are tried: three screens, the first two at 200 %, and 400 % of a screen of 1280 by 1024.
const SIZES: [(u32, u32); 6] = [(1440, 900), (1024, 768), (390, 844), (720, 450), (512, 384), (320, 256)];
/// The least height of what a page is about, in CSS pixels.
const ROOM: f64 = 100.0;
/// Acts of a job that a log shows without scrolling.
const SHORT: usize = 4;
/// The tallest page looked at in one piece.
const TALLEST: f64 = 15_000.0;

/// A page, what is there once it is, and the sections that a phone shows one at a time.
struct Page {
    below: &'static str,
    there: &'static str,
    sections: &'static [&'static str],
}

const PAGES: [Page; 7] = [
    Page { below: "#/", there: "[data-door=practise]", sections: &[] },
    Page { below: "#/exam", there: "[data-door=enter]", sections: &[] },
    Page { below: "#/instructor", there: "[data-door=handout]", sections: &[] },
    Page { below: "#/sources", there: ".sources", sections: &[] },
    Page { below: "#/atlas", there: "main a", sections: &[] },
    Page { below: "#/drill", there: ".drill", sections: &["Heater", "Meter", "Kit", "Log", "Call"] },
    Page { below: "#/debrief", there: ".steps", sections: &["inside", "steps", "report", "account"] },
];

/// Opens a page with a job on the device, loaded once.
fn open(browser: &Browser, page: &Page, language: &str) {
    let call = calls::whole();
    let code = drill::code::encode(&call.attempt.order).expect("the call has a code");
    // A long log scrolls under its own heading: the drill is looked at near its beginning.
    let acts = if page.below == "#/drill" { SHORT } else { call.attempt.actions.len() };
    keep(browser, &code, "", call.attempt.actions.get(..acts).unwrap_or_default());
    browser.run("localStorage.setItem('tankwright.language', arguments[0]);", &[json!(language)]);
    browser.go(&format!("?{language}{}", page.below));
    if browser.run("return document.documentElement.lang.slice(0, 2);", &[]) != json!(language) {
        browser.reload();
    }
    browser.wait_until_started();
    browser.wait_until(&format!("document.querySelector(\"{}\")", page.there));
    browser.wait_until("!document.querySelector('.filling, .busy')");
}

/// Turns to a section, where the page shows one at a time.
fn turn(browser: &Browser, section: &str) -> bool {
    let turned = browser.run(
        "const tab = document.querySelector(`[data-tab=${arguments[0]}]`);
         if (!tab?.checkVisibility() || tab.getClientRects().length === 0) return false;
         tab.click();
         return true;",
        &[json!(section)],
    );
    turned == Value::Bool(true)
}

/// As tall as the page is, so that all of it is in view.
fn stretch(browser: &Browser, width: u32, forced: bool) {
    let height = browser.run("return document.documentElement.scrollHeight;", &[]).as_f64().unwrap_or(900.0);
    browser.show_at(width, height.min(TALLEST) as u32, false, forced);
    browser.run("window.dispatchEvent(new Event('resize'));", &[]);
}

/// However low the screen is, there is room for what the page is about, and nothing lies on what turns to its sections.
fn assert_roomy(browser: &Browser, what: &str) {
    let height = browser.run("return document.querySelector('main').getBoundingClientRect().height;", &[]);
    assert!(height.as_f64().is_some_and(|height| height >= ROOM), "{what}: main is {height} high");
    let covered = browser.run(
        "return [...document.querySelectorAll('[data-tab]')].filter((tab) => tab.getClientRects().length > 0).filter((tab) => {
            tab.scrollIntoView({ block: 'nearest' });
            const { left, top, width, height } = tab.getBoundingClientRect();
            return !tab.contains(document.elementFromPoint(left + width / 2, top + height / 2));
        }).map((tab) => tab.dataset.tab);",
        &[],
    );
    assert_eq!(covered, json!([]), "{what}: under something else");
    browser.run("window.scrollTo(0, 0);", &[]);
}

fn on_every_size(language: &str) {
    let Some(browser) = Browser::open_page(Screen::DESK) else { return };
    for page in &PAGES {
        browser.show_at(1440, 900, false, false);
        open(&browser, page, language);
        for (width, height) in SIZES {
            browser.show_at(width, height, false, false);
            browser.run("window.dispatchEvent(new Event('resize'));", &[]);
            let look = |name: &str| {
                browser.assert_legible(&format!("{}{name} in {language} on {width}", page.below))
            };
            assert_roomy(&browser, &format!("{} in {language} on {width}", page.below));
            if width > 760 && !page.sections.is_empty() {
                stretch(&browser, width, false);
            }
            look("");
            for section in page.sections {
                if turn(&browser, section) {
                    look(&format!(", {section},"));
                }
            }
            if language == "en" && matches!(width, 1440 | 390) {
                browser.show_at(width, height, false, true);
                let name = page.below.trim_start_matches("#/");
                browser.picture(&format!("forced-{}-{width}", if name.is_empty() { "doors" } else { name }));
                assert_eq!(
                    browser.run(VANISHED, &[]),
                    json!([]),
                    "{} in forced colours on {width}",
                    page.below
                );
            }
        }
    }
    browser.assert_quiet();
}

/// Everything that a heater has taken off, so that a place carries the most words.
fn laid_bare() -> Vec<Action> {
    let off = [Action::Breaker { slot: 2, on: false }, Action::Lock { slot: 2, on: true }];
    let covers = [Cover::PanelFront, Cover::JunctionBox].into_iter().chain(COMPARTMENTS);
    let bare = covers.map(|which| Action::Cover { which, off: true });
    let looks = [Place::LoadCenter, Place::UpperCompartment, Place::LowerCompartment, Place::Drain];
    off.into_iter().chain(bare).chain(looks.map(|at| Action::Look { at })).collect()
}

/// Goes to each place of a house laid bare, one after the other, and looks.
fn at_each_place(
    browser: &Browser,
    language: &str,
    heater: HeaterModel,
    mut look: impl FnMut(&Browser, Place),
) {
    let drill = format!(r#"{{"seed": 11, "heater": "{heater}", "mode": "coached"}}"#);
    keep(browser, &drill, "", &laid_bare());
    browser.run("localStorage.setItem('tankwright.language', arguments[0]);", &[json!(language)]);
    browser.go(&format!("?{language}-{heater}#/drill"));
    browser.wait_until_started();
    browser.wait_until("document.querySelector('.places [data-go]')");
    for place in Place::ALL.iter().filter(|place| **place != Place::Customer) {
        let go = format!("[data-go={}]", place.name());
        if !browser.has(&go) {
            continue;
        }
        browser.run("document.querySelector(arguments[0]).click();", &[json!(go)]);
        browser.wait_until(&format!("document.querySelector('[data-at={}]')", place.name()));
        // What can be done there is drawn in several turns.
        browser.wait_until("!document.querySelector('.filling')");
        look(browser, *place);
    }
}

fn places_on_every_size(language: &str) {
    let Some(browser) = Browser::open_page(Screen::DESK) else { return };
    let mut amiss = Vec::new();
    for heater in [HeaterModel::Plain40, HeaterModel::Board50] {
        browser.show_at(1440, 900, false, false);
        at_each_place(&browser, language, heater, |browser, place| {
            for (width, height) in SIZES {
                browser.show_at(width, height, false, false);
                browser.run("window.dispatchEvent(new Event('resize'));", &[]);
                let found = browser.amiss();
                let sideways = browser.run("return document.scrollingElement.scrollWidth - innerWidth;", &[]);
                if found != json!([]) || sideways != json!(0) {
                    amiss.push(format!(
                        "{heater}, {place}, {language}, {width}: {found}, {sideways} sideways"
                    ));
                }
            }
        });
    }
    assert!(amiss.is_empty(), "{}", amiss.join("\n"));
    browser.assert_quiet();
}

#[test]
fn no_text_of_a_place_is_cut_or_overlaps_in_english() {
    places_on_every_size("en");
}

#[test]
fn no_text_of_a_place_is_cut_or_overlaps_in_spanish() {
    places_on_every_size("es");
}

#[test]
fn everything_pressed_at_a_place_on_a_phone_is_as_large_as_a_finger() {
    let Some(browser) = Browser::open_page(Screen::PHONE) else { return };
    let mut small = Vec::new();
    for heater in [HeaterModel::Plain40, HeaterModel::Board50] {
        at_each_place(&browser, "en", heater, |browser, place| {
            turn(browser, "Heater");
            let found = browser.too_small(44.0);
            if found != json!([]) {
                small.push(format!("{heater}, {place}: {found}"));
            }
        });
    }
    assert!(small.is_empty(), "too small:\n{}", small.join("\n"));
}

/// Presses each point of the detail in turn, somewhat less than half the way to the point nearest to it, and at its own
/// middle as what is no finger does; answers with the points that did not take it.
const PRESSED: &str = "
const done = arguments[arguments.length - 1];
const all = [...document.querySelectorAll('.detail [data-point]')].map((one) => {
    const { x, y, width, height } = one.querySelector('.hit').getBoundingClientRect();
    return { name: one.dataset.point, one, x: x + width / 2, y: y + height / 2 };
});
const turn = () => new Promise((next) => setTimeout(next, 0));
const taken = async (name) => {
    for (let times = 0; times < 50; times += 1) {
        if (document.querySelector(`.detail [data-point='${name}']`).getAttribute('aria-pressed') === 'true') return true;
        await turn();
    }
    return false;
};
(async () => {
    const missed = [];
    for (const a of all) {
        const far = (b) => Math.hypot(a.x - b.x, a.y - b.y);
        const b = all.filter((b) => b !== a).reduce((b, c) => (far(c) < far(b) ? c : b));
        const share = Math.min(0.45, 20 / far(b));
        const [clientX, clientY] = [a.x + (b.x - a.x) * share, a.y + (b.y - a.y) * share];
        const under = document.elementFromPoint(clientX, clientY);
        under.dispatchEvent(new MouseEvent('click', { bubbles: true, detail: 1, clientX, clientY }));
        if (!(await taken(a.name))) missed.push(`${a.name}, towards ${b.name}`);
        b.one.dispatchEvent(new MouseEvent('click', { bubbles: true }));
        if (!(await taken(b.name))) missed.push(`${b.name}, by itself`);
    }
    done(missed);
})();";

#[test]
fn a_press_between_two_points_goes_to_the_nearer_one() {
    let Some(browser) = Browser::open_page(Screen::PHONE) else { return };
    let mut tried = 0;
    for heater in [HeaterModel::Plain40, HeaterModel::Board50] {
        at_each_place(&browser, "en", heater, |browser, place| {
            turn(browser, "Heater");
            if browser.has(".detail [data-point]") {
                assert_eq!(browser.run_until_answered(PRESSED, &[]), json!([]), "{heater}, {place}");
                tried += 1;
            }
        });
    }
    assert!(tried >= 8, "{tried} details");
}

/// Words whose colour in forced colours is that of what they stand on.
const VANISHED: &str = "
const ground = (one) => {
    for (let each = one; each; each = each.parentElement) {
        const colour = getComputedStyle(each).backgroundColor;
        if (!/, 0\\)$|transparent/.test(colour)) return colour;
    }
    return getComputedStyle(document.documentElement).backgroundColor;
};
const found = [];
for (const one of document.querySelectorAll('body *:not(svg *)')) {
    const own = [...one.childNodes].some((node) => node.nodeType === 3 && node.textContent.trim());
    if (!own || !one.checkVisibility({ visibilityProperty: true, opacityProperty: true }) || one.closest('.unseen, .report')) continue;
    if (getComputedStyle(one).color === ground(one)) found.push(one.textContent.trim().slice(0, 40));
}
return [...new Set(found)];";

#[test]
fn no_text_of_a_page_is_cut_or_overlaps_in_english() {
    on_every_size("en");
}

#[test]
fn no_text_of_a_page_is_cut_or_overlaps_in_spanish() {
    on_every_size("es");
}

#[test]
fn everything_pressed_on_a_phone_is_as_large_as_a_finger() {
    let Some(browser) = Browser::open_page(Screen::PHONE) else { return };
    let mut small = Vec::new();
    for page in &PAGES {
        open(&browser, page, "en");
        let mut look = |name: &str| {
            let found = browser.too_small(44.0);
            if found != json!([]) {
                small.push(format!("{}{name}: {found}", page.below));
            }
        };
        look("");
        for section in page.sections {
            if turn(&browser, section) {
                look(&format!(", {section}"));
            }
        }
    }
    let Some(desk) = Browser::open_page(Screen::DESK) else { return };
    for page in &PAGES {
        open(&desk, page, "en");
        let found = desk.too_small(24.0);
        if found != json!([]) {
            small.push(format!("{} on a desk: {found}", page.below));
        }
    }
    assert!(small.is_empty(), "too small:\n{}", small.join("\n"));
}

#[test]
fn nothing_moves_for_who_asks_for_less_motion() {
    let Some(browser) = Browser::open_page(Screen::DESK) else { return };
    for page in &PAGES {
        open(&browser, page, "en");
        let moving = browser.run(
            "return [...document.querySelectorAll('*')].filter((one) => {
                const style = getComputedStyle(one);
                return style.animationName !== 'none' || style.transitionDuration.split(',').some((each) => parseFloat(each) > 0)
                    || style.scrollBehavior === 'smooth';
            }).map((one) => one.outerHTML.slice(0, 80));",
            &[],
        );
        assert_eq!(moving, json!([]), "{}", page.below);
    }
}
