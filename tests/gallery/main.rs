//! The gallery in a browser: every group at three sizes, light, dark and in forced colours, a picture of each; and no
//! text cut or lying over another, in both languages, at 100 and 200 %. One page load for all: groups, sizes, colours
//! and languages are exchanged on the page.
//!
//! That every component of the page is in the gallery is held in `tests/tests/tidy.rs`.
//!
//! Works on a quick build of the page in `TANKWRIGHT_GALLERY`; without one there is nothing to show, and it says so.

use serde_json::json;
use tankwright_tests::browser::{Browser, Screen};

/// The gallery's groups.
const GROUPS: [&str; 22] = [
    "sheets",
    "found",
    "states",
    "exchange",
    "details",
    "stickers",
    "places",
    "panels",
    "small",
    "guide",
    "dialogs",
    "doors",
    "ladders",
    "tanks",
    "plots",
    "debrief",
    "show",
    "exam",
    "instructor",
    "atlas",
    "lookups",
    "pages",
];
/// Sizes of the pictures.
const SIZES: [(u32, u32); 3] = [(1440, 900), (1024, 768), (390, 844)];
/// Sizes on which words are tried: the same, then the first two at 200 %, and the narrowest that a page must bear.
const LEGIBLE: [(u32, u32); 6] = [(1440, 900), (1024, 768), (390, 844), (720, 450), (512, 384), (320, 640)];
/// The tallest picture taken.
const TALLEST: f64 = 15_000.0;

/// A browser on the quick build, where there is one.
fn opened() -> Option<Browser> {
    if std::env::var_os("TANKWRIGHT_GALLERY").is_none() {
        eprintln!("left out: TANKWRIGHT_GALLERY names no quick build of the page");
        return None;
    }
    Browser::open_page_at(Screen::DESK, "#/gallery")
}

/// Shows a group on the page that is there.
fn show(browser: &Browser, group: &str) {
    browser.run("location.hash = `#/gallery/${arguments[0]}`;", &[json!(group)]);
    browser.wait_until(&format!("document.querySelector('.frames[data-group={group}] figure')"));
    browser.wait_until(
        "!document.querySelector('.filling, .busy:not(.paused .busy), .frames .would [role=status]')",
    );
}

/// As tall as the page is, so that all of it is in view.
fn stretch(browser: &Browser, (width, height): (u32, u32), dark: bool, forced: bool) {
    browser.show_at(width, height, dark, forced);
    browser.run("window.dispatchEvent(new Event('resize'));", &[]);
    let height = browser.run("return document.documentElement.scrollHeight;", &[]).as_f64().unwrap_or(900.0);
    browser.show_at(width, height.min(TALLEST) as u32, dark, forced);
    browser.run("window.dispatchEvent(new Event('resize'));", &[]);
}

/// Turns to a language, before the empty list of groups: what is shown after it is made anew.
fn speak(browser: &Browser, language: &str) {
    browser.run("location.hash = '#/gallery';", &[]);
    browser.wait_until("!document.querySelector('.frames figure')");
    if browser.run("return document.documentElement.lang.slice(0, 2);", &[]) != json!(language) {
        browser.run("document.querySelector('[data-act=language]').click();", &[]);
        browser.wait_until(&format!("document.documentElement.lang.startsWith('{language}')"));
    }
}

#[test]
fn pictures_of_every_group() {
    let Some(browser) = opened() else { return };
    for group in GROUPS {
        show(&browser, group);
        for size in SIZES {
            for (name, dark, forced) in [
                ("light", false, false),
                ("dark", true, false),
                ("forced", false, true),
                ("forced-dark", true, true),
            ] {
                stretch(&browser, size, dark, forced);
                browser.picture(&format!("gallery-{group}-{}-{name}", size.0));
            }
        }
    }
    browser.assert_quiet();
}

#[test]
fn no_text_of_the_gallery_is_cut_or_overlaps() {
    let Some(browser) = opened() else { return };
    let mut amiss = Vec::new();
    for language in ["en", "es"] {
        speak(&browser, language);
        for group in GROUPS {
            show(&browser, group);
            for size in LEGIBLE {
                stretch(&browser, size, false, false);
                let found = browser.amiss();
                let sideways = browser.run("return document.scrollingElement.scrollWidth - innerWidth;", &[]);
                if found != json!([]) || sideways != json!(0) {
                    amiss.push(format!("{group} in {language} on {}: {found}, {sideways} sideways", size.0));
                }
            }
        }
    }
    assert!(amiss.is_empty(), "{}", amiss.join("\n"));
}
