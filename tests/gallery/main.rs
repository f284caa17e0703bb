//! The gallery in a browser: every group at three sizes, light, dark and in forced colours, a picture of each; and no
//! text cut or lying over another, in both languages, at 100 and 200 %, in the gallery and on every page.
//!
//! Works on a quick build of the page in `TANKWRIGHT_GALLERY`; without one there is nothing to show, and it says so.

use bench::Action;
use serde_json::json;
use tankwright_tests::browser::{Browser, Screen};

/// The gallery's groups.
const GROUPS: [&str; 9] =
    ["sheets", "found", "details", "places", "panels", "small", "ladders", "tanks", "plots"];
/// Sizes of the pictures.
const SIZES: [(u32, u32); 3] = [(1440, 900), (1024, 768), (390, 844)];
/// Sizes on which words are tried: the same, then the first two at 200 %, and the narrowest that a page must bear.
const LEGIBLE: [(u32, u32); 6] = [(1440, 900), (1024, 768), (390, 844), (720, 450), (512, 384), (320, 640)];
/// Acts of a job that a log shows without scrolling.
const SHORT: usize = 4;
/// The tallest picture taken.
const TALLEST: f64 = 15_000.0;

/// A browser on the quick build, where there is one.
fn opened() -> Option<Browser> {
    if std::env::var_os("TANKWRIGHT_GALLERY").is_none() {
        eprintln!("left out: TANKWRIGHT_GALLERY names no quick build of the page");
        return None;
    }
    Browser::open_page(Screen::DESK)
}

fn go(browser: &Browser, below: &str, wait_for: &str) {
    browser.go(below);
    browser.reload();
    browser.wait_until(&format!("document.querySelector(\"{wait_for}\")"));
}

/// As tall as the page is, so that all of it is in view.
fn stretch(browser: &Browser, width: u32, dark: bool, forced: bool) {
    let height = browser.run("return document.documentElement.scrollHeight;", &[]).as_f64().unwrap_or(900.0);
    browser.show_at(width, height.min(TALLEST) as u32, dark, forced);
    browser.run("window.dispatchEvent(new Event('resize'));", &[]);
}

fn speak(browser: &Browser, language: &str) {
    browser.run("localStorage.setItem('tankwright.language', arguments[0]);", &[json!(language)]);
}

#[test]
fn pictures_of_every_group() {
    let Some(browser) = opened() else { return };
    for group in GROUPS {
        for (width, height) in SIZES {
            browser.show_at(width, height, false, false);
            go(&browser, &format!("#/gallery/{group}"), ".frames figure");
            for (name, dark, forced) in [
                ("light", false, false),
                ("dark", true, false),
                ("forced", false, true),
                ("forced-dark", true, true),
            ] {
                stretch(&browser, width, dark, forced);
                browser.picture(&format!("gallery-{group}-{width}-{name}"));
            }
        }
    }
    browser.assert_quiet();
}

#[test]
fn no_text_of_the_gallery_is_cut_or_overlaps() {
    let Some(browser) = opened() else { return };
    for language in ["en", "es"] {
        speak(&browser, language);
        for group in GROUPS {
            for (width, height) in LEGIBLE {
                browser.show_at(width, height, false, false);
                go(&browser, &format!("#/gallery/{group}"), ".frames figure");
                stretch(&browser, width, false, false);
                browser.assert_legible(&format!("{group} in {language} on {width}"));
            }
        }
    }
}

#[test]
fn no_text_of_a_page_is_cut_or_overlaps() {
    let Some(browser) = opened() else { return };
    let call = drill::Attempt::read(include_str!("../browser/calls/whole-call.json")).expect("the call");
    let code = drill::code::encode(&call.order).expect("a code");
    let pages = [
        ("#/", "[data-door=practise]"),
        ("#/exam", "[data-door=enter]"),
        ("#/instructor", "[data-door=handout]"),
        ("#/sources", ".sources"),
        ("#/atlas", "main"),
        ("#/drill", ".drill"),
        ("#/debrief", ".debrief"),
    ];
    for language in ["en", "es"] {
        for (below, wait_for) in pages {
            // A long log scrolls under its own heading: the drill is looked at near its beginning.
            let acts = if below == "#/drill" { SHORT.min(call.actions.len()) } else { call.actions.len() };
            keep(&browser, &code, call.actions.get(..acts).unwrap_or_default());
            speak(&browser, language);
            for (width, height) in LEGIBLE {
                browser.show_at(width, height, false, false);
                go(&browser, below, wait_for);
                if below == "#/sources" || below == "#/atlas" || width < 761 {
                    browser.assert_legible(&format!("{below} in {language} on {width}"));
                    continue;
                }
                stretch(&browser, width, false, false);
                browser.assert_legible(&format!("{below} in {language} on {width}"));
            }
        }
    }
}

/// Puts a job on the browser's device, as the page keeps it.
fn keep(browser: &Browser, drill: &str, actions: &[Action]) {
    let head = json!({ "attempt": "1", "drill": drill, "learner": "" }).to_string();
    let acts: Vec<String> = actions.iter().map(|one| serde_json::to_string(one).expect("an act")).collect();
    browser.run(
        "localStorage.clear();
         localStorage.setItem('tankwright.job', arguments[0]);
         arguments[1].forEach((act, at) => localStorage.setItem(`tankwright.act.${at + 1}`, act));",
        &[json!(head), json!(acts)],
    );
}
