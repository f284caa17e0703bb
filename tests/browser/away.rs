//! What is computed away from the page: stopped in the middle nothing is lost, and where a browser has no workers the
//! page says what it is about to do and does it itself. A class of a hundred attempts is read in, stopped and gone on with.

use std::fs;
use std::time::{Duration, Instant};

use bench::Action;
use drill::Attempt;
use serde_json::{Value, json};
use tankwright_tests::browser::{Browser, Hand, Screen};
use tankwright_tests::tree;

use super::calls;
use super::work::{Work, keep};

const HAND: Hand = Hand::Mouse;
/// Longest that a hundred attempts may take, on a busy machine too.
const LONGEST: Duration = Duration::from_secs(240);

/// A browser without workers.
const REFUSED: &str = "window.Worker = class { constructor() { throw new DOMException('no workers here', 'SecurityError'); } };";

/// A browser whose workers answer only while asked to: what is on its way can be looked at.
const LATE: &str = "
window.held = true;
const Honest = window.Worker;
window.Worker = class extends Honest {
    postMessage(message) {
        const send = () => { if (window.held) setTimeout(send, 20); else super.postMessage(message); };
        send();
    }
};";

/// Notes what the page says that it is computing.
const NOTE: &str = "
window.said = [];
new MutationObserver(() => {
    const text = document.querySelector('.busy [role=status]')?.textContent;
    if (text && window.said.at(-1) !== text) window.said.push(text);
}).observe(document, { subtree: true, childList: true, characterData: true });";

fn blank(script: &str) -> Option<Browser> {
    let browser = Browser::blank(Screen::DESK)?;
    for source in [script, NOTE] {
        browser.command("Page.addScriptToEvaluateOnNewDocument", json!({ "source": source }));
    }
    Some(browser)
}

fn said(browser: &Browser, text: &str) -> bool {
    browser.run("return window.said.includes(arguments[0]);", &[json!(text)]) == Value::Bool(true)
}

/// The text of the English book.
fn text(id: &str) -> String {
    words::Voice::english(words::Units::Customary).text(id)
}

#[test]
fn without_workers_the_page_says_so_and_computes_itself() {
    let Some(browser) = blank(REFUSED) else { return };
    let call = calls::whole();
    let code = drill::code::encode(&call.attempt.order).expect("the call has a code");
    browser.go(&format!("#/drill/{code}"));
    browser.wait_until_started();
    browser.press_at(HAND, "[data-act=start]");
    let mut work = Work::begun(&browser, HAND);
    assert!(said(&browser, &text("page-dealing")), "the page says that it deals the drill");
    work.act(&Action::TellHousehold);
    work.act(&Action::HandOver);
    browser.press_at(HAND, ".over a");
    browser.css("[data-account=safety]");
    assert!(said(&browser, &text("debrief-folding")), "the page says that it works the job through");
    keep(&browser, &code, "", &call.attempt.actions);
    browser.go("?whole#/debrief");
    for (account, got) in drill::Account::ALL.iter().zip(call.score().reached) {
        let name = serde_json::to_value(account).expect("an account has a name");
        let points =
            browser.css(&format!("[data-account={}] .points b", name.as_str().unwrap_or_default())).text();
        assert_eq!(points, got.to_string(), "{account:?}");
    }
    browser.assert_quiet();
}

#[test]
fn a_drill_that_is_stopped_can_be_started_again() {
    let Some(browser) = blank(LATE) else { return };
    let code = drill::code::encode(&calls::whole().attempt.order).expect("the call has a code");
    browser.go(&format!("#/drill/{code}"));
    browser.wait_until_started();
    let field = browser.reach(HAND, "[data-field=learner]");
    browser.write(HAND, &field, "Bench 3");
    browser.press_at(HAND, "[data-act=start]");
    browser.css(".busy progress");
    browser.assert_accessible();
    browser.picture("stopping-1440x900-light");
    browser.press_at(HAND, "[data-act=stop]");
    browser.css("[data-act=start]");
    assert_eq!(browser.css("[data-field=learner]").property("value"), json!("Bench 3"));
    assert!(!browser.has(".busy"), "nothing is computed any more");
    browser.run("window.held = false;", &[]);
    browser.press_at(HAND, "[data-act=start]");
    Work::begun(&browser, HAND).act(&Action::TellHousehold);
    // The debrief of the same job, stopped and gone on with: the job is as it was.
    browser.run("window.held = true;", &[]);
    browser.press_at(HAND, "[data-act=hand-over-asked]");
    browser.press_at(HAND, "dialog[open] [data-act=hand-over]");
    browser.press_at(HAND, ".over a");
    browser.press_at(HAND, ".busy [data-act=stop]");
    browser.wait_for_text(&text("page-stopped"));
    browser.run("window.held = false;", &[]);
    browser.press_at(HAND, "[data-act=go-on]");
    browser.css("[data-account=safety]");
    let acts =
        browser.run("return [1, 2, 3].map((step) => localStorage.getItem(`tankwright.act.${step}`));", &[]);
    assert!(acts[0].is_string() && acts[1].is_string() && acts[2].is_null(), "{acts}");
    browser.assert_quiet();
}

#[test]
fn a_class_of_a_hundred_is_stopped_and_gone_on_with() {
    let Some(browser) = Browser::open_page_at(Screen::DESK, "#/instructor/attempts") else { return };
    let folder = tree::out().join("saved").join("hundred");
    drop(fs::remove_dir_all(&folder));
    fs::create_dir_all(&folder).expect("tests/out can be written");
    let folder = folder.canonicalize().expect("the folder is there");
    let (whole, careless) = (calls::whole().attempt, calls::careless().attempt);
    let files: Vec<String> = (0..100usize)
        .map(|at| {
            let source = if at % 2 == 0 { &whole } else { &careless };
            let attempt = Attempt { learner: format!("Bench {at:03}"), ..source.clone() };
            let path = folder.join(format!("{at:03}.json"));
            fs::write(&path, attempt.write()).expect("the folder can be written");
            path.to_string_lossy().into_owned()
        })
        .collect();
    browser.css("input[data-pick=attempts]").type_text(&files.join("\n"));
    let rows = "document.querySelectorAll('.class-table tbody tr').length";
    browser.wait_until(&format!("{rows} >= 3"));
    let share = browser.css(".busy progress").property("value").as_f64().unwrap_or_default();
    assert!(share > 0.0 && share < 1.0, "the bar shows {share}");
    browser.press_at(HAND, ".busy [data-act=stop]");
    browser.css("[data-act=go-on]");
    let before = browser.run(&format!("return {rows};"), &[]);
    std::thread::sleep(std::time::Duration::from_millis(500));
    assert_eq!(browser.run(&format!("return {rows};"), &[]), before, "it goes on after it was stopped");
    assert!((3..100).contains(&before.as_u64().unwrap_or_default()), "{before}");
    browser.press_at(HAND, "[data-act=go-on]");
    let began = Instant::now();
    while browser.run(&format!("return {rows};"), &[]) != json!(100) {
        assert!(began.elapsed() < LONGEST, "a hundred take longer than {LONGEST:?}");
        std::thread::sleep(Duration::from_millis(200));
    }
    let names = browser.run(
        "return new Set([...document.querySelectorAll('.class-table tbody tr')].map((one) => one.textContent.match(/Bench \\d+/)[0])).size;",
        &[],
    );
    assert_eq!(names, json!(100));
    browser.assert_quiet();
}
