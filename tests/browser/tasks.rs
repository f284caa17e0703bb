//! Ten tasks tried as a newcomer, counted by a rule on three screens, and both guided calls timed; `docs/tasks.md` says the
//! same. The newcomer takes the first control whose words name what he wants, goes back to the drawing where a place is
//! not on the screen, points at what a reading is wanted between, and mends a lead that went elsewhere.
//!
//! Presses are counted as the page gets them; choosing from a list counts two, scrolling nothing.

use std::collections::BTreeSet;

use bench::{Action, Writing};
use plant::household::Question;
use serde_json::json;
use tankwright_tests::browser::{Browser, Hand, Screen};
use tankwright_tests::tree;

use super::work::{COMPARTMENTS, keep};

const DRILL: &str = r#"{"seed": 7, "fault": "F01", "heater": "plain-40", "mode": "coached"}"#;
/// The screens, in the order of the table's columns.
const SCREENS: [Screen; 3] = [Screen::LAPTOP, Screen::DESK, Screen::PHONE];
/// Words read in a minute: common practice, no source.
const WORDS_A_MINUTE: f64 = 200.0;
/// Seconds for a press: think, point, press (1.35, 1.1 and 0.2 s; Card, Moran and Newell, the keystroke-level model, from
/// memory).
const A_PRESS: f64 = 2.65;
/// What a first call is meant to take for who does what the guide says, in minutes.
const FIRST_CALL: f64 = 5.0;

/// Counts presses and choices where they arrive, before the page does anything with them.
const COUNT: &str = "
window.presses = 0;
const list = (event) => event.target.closest?.('select, option');
addEventListener('pointerup', (event) => { if (event.isTrusted && !list(event)) window.presses += 1; }, true);
addEventListener('change', (event) => { if (list(event)) window.presses += 2; }, true);";

/// Somebody who is here for the first time.
struct Newcomer<'a> {
    browser: &'a Browser,
    hand: Hand,
}

impl Newcomer<'_> {
    #[track_caller]
    fn press(&self, selector: &str) {
        self.browser.press_at(self.hand, selector);
    }

    /// An act by its name on the page, then what it did is there.
    #[track_caller]
    fn act(&self, slug: &str) {
        let before = self.done();
        self.press(&format!("[data-act='{slug}']"));
        self.browser.wait_until(&format!("localStorage.getItem('tankwright.act.{}')", before + 1));
    }

    fn done(&self) -> usize {
        let acts =
            "return Object.keys(localStorage).filter((key) => key.startsWith('tankwright.act.')).length;";
        self.browser.run(acts, &[]).as_u64().unwrap_or_default() as usize
    }

    /// By the row of places where it is on the screen, else by the drawing.
    #[track_caller]
    fn go(&self, place: &str) {
        self.press(&format!("[data-go={place}], .spot[data-place={place}] .hit"));
        self.browser.wait_until(&format!("document.querySelector('[data-at={place}]')"));
    }

    /// Points at something on the drawing of the place.
    #[track_caller]
    fn point(&self, at: &str) {
        let dot = format!(".detail [data-point='{at}']");
        self.press(&format!("{dot} circle:not(.hit)"));
        self.browser.wait_until(&format!(
            "document.querySelector(\"{dot}\")?.getAttribute('aria-pressed') === 'true'"
        ));
    }

    /// A reading between two points: points at both, mends a lead that is elsewhere, turns the dial where it is not set.
    #[track_caller]
    fn read(&self, dial: &str, points: &[&str], wanted: [&str; 2]) {
        for at in points {
            self.point(at);
        }
        for (lead, at) in ["red", "black"].into_iter().zip(wanted) {
            let list = self.browser.css(&format!("[data-choice=lead-{lead}]"));
            if list.property("value") != json!(at) {
                let list = self.browser.reach(self.hand, &format!("[data-choice=lead-{lead}]"));
                self.browser.choose(self.hand, &list, at);
            }
        }
        let set = format!("[data-setting={dial}]");
        if self.browser.css(&set).attribute("aria-pressed").as_deref() != Some("true") {
            self.press(&set);
        }
        let before = self.done();
        self.press("[data-act=take-reading]");
        self.browser.wait_until(&format!("localStorage.getItem('tankwright.act.{}')", before + 1));
    }

    fn covers(&self, level: &str) {
        self.press(&format!("[data-act='all cover off=true which={level}']"));
        self.browser.wait_until(&format!(
            "document.querySelector(\"[data-act^='all cover off=false which={level}']\")"
        ));
    }

    /// Presses since they were last counted.
    fn presses(&self) -> u64 {
        let found = self.browser.run("const all = window.presses; window.presses = 0; return all;", &[]);
        found.as_u64().expect("presses are counted")
    }
}

/// Breaker off and both compartments bare.
fn bare() -> Vec<Action> {
    std::iter::once(Action::Breaker { slot: 2, on: false })
        .chain(COMPARTMENTS.map(|which| Action::Cover { which, off: true }))
        .collect()
}

/// A task: what was done before, the place it begins at, and how it is done.
type Task = (Vec<Action>, Option<&'static str>, fn(&Newcomer));

fn tasks() -> Vec<Task> {
    vec![
        (Vec::new(), None, |one| {
            one.act("ask question=last-good");
            one.act("read what=plate");
        }),
        (Vec::new(), Some(""), |one| {
            one.go("load-center");
            one.act("read what=directory");
            one.act("breaker on=false slot=2");
            one.act("lock on=true slot=2");
        }),
        (Vec::new(), Some("load-center"), |one| {
            one.go("upper-compartment");
            one.covers("upper");
            one.go("lower-compartment");
            one.covers("lower");
        }),
        (bare(), Some(""), |one| {
            one.act("prove-meter on=receptacle");
            one.go("upper-compartment");
            one.read("low-volts", &["H1", "H3"], ["H1", "H3"]);
        }),
        (bare(), Some(""), |one| {
            one.go("upper-compartment");
            one.read("low-volts", &["H1", "H3"], ["H1", "H3"]);
            one.read("low-volts", &["shell"], ["H1", "shell"]);
            for screw in ["H2", "H3", "H4"] {
                one.read("low-volts", &[screw], [screw, "shell"]);
            }
        }),
        (bare(), Some(""), |one| {
            one.go("lower-compartment");
            for (screw, end) in [("LEa", "lower-switched@LEa"), ("LEb", "lower-permanent@LEb")] {
                one.point(screw);
                one.act(&format!("label end={end}"));
                one.act(&format!("lift end={end}"));
            }
            one.read("ohms", &[], ["LEa", "LEb"]);
        }),
        (
            vec![Action::Ask { question: Question::LastGood }, Action::Read { what: Writing::Plate }],
            Some(""),
            |one| {
                one.press("input[data-step='1']");
                one.press("input[data-step='2']");
                let list = one.browser.reach(one.hand, "[data-choice=finding]");
                one.browser.choose(one.hand, &list, "F01");
                one.press("[data-act^='finding']");
                one.browser.wait_until("localStorage.getItem('tankwright.act.3')");
            },
        ),
        (bare(), Some(""), |one| {
            one.go("heater-top");
            one.act("cold-valve opening=0.0");
            one.go("taps");
            one.act("tap opening=1.0 tap=kitchen");
            one.act("hose on=true");
            one.go("drain");
            one.act("drain opening=1.0");
            one.act("wait minutes=30.0");
        }),
        (Vec::new(), Some("load-center"), |one| {
            one.go("taps");
            one.press("[data-act^='bucket'][data-act*='kitchen']");
            one.browser.wait_until("localStorage.getItem('tankwright.act.1')");
        }),
    ]
}

/// Presses for each task on a screen, the first task first.
fn counted(browser: &Browser, screen: Screen) -> Vec<u64> {
    browser.show_on(screen);
    let hand = if screen.touch { Hand::Touch } else { Hand::Mouse };
    let one = Newcomer { browser, hand };
    browser.run("localStorage.clear();", &[]);
    browser.go(&format!("?tasks-{}#/", screen.width));
    browser.wait_until_started();
    browser.run(COUNT, &[]);
    one.press("[data-act=first]");
    browser.wait_until("document.querySelector('.drill')");
    let mut all = vec![one.presses()];
    for (at, (before, place, work)) in tasks().into_iter().enumerate() {
        keep(browser, DRILL, "", &before);
        browser.go(&format!("?task-{}-{at}#/drill", screen.width));
        browser.wait_until_started();
        browser.wait_until("document.querySelector('.places [data-go]')");
        match place {
            // From the drawing: on a phone that section is open.
            Some("") if screen.touch => one.press("[data-tab=Heater]"),
            Some(place) if !place.is_empty() => one.go(place),
            _ => {}
        }
        browser.run(COUNT, &[]);
        work(&one);
        all.push(one.presses());
    }
    all
}

#[test]
fn ten_tasks_take_what_their_table_says() {
    let Some(browser) = Browser::open_page(Screen::DESK) else { return };
    let Some(phone) = Browser::open_page(Screen::PHONE) else { return };
    let counts = SCREENS.map(|screen| counted(if screen.touch { &phone } else { &browser }, screen));
    let table = std::fs::read_to_string(tree::root().join("docs/tasks.md")).expect("docs/tasks.md");
    let mut amiss = Vec::new();
    for at in 0..counts[0].len() {
        let now = counts.iter().map(|all| all[at].to_string()).collect::<Vec<_>>().join(" | ");
        let row = table.lines().find(|line| line.starts_with(&format!("| {} ", at + 1)));
        if !row.is_some_and(|row| row.ends_with(&format!("| {now} |"))) {
            amiss.push(format!("task {}: {now}, and the table says {row:?}", at + 1));
        }
    }
    assert!(amiss.is_empty(), "{}", amiss.join("\n"));
}

/// How somebody goes along with the guide.
#[derive(Clone, Copy, PartialEq, Eq)]
enum Reader {
    /// Reads what to do, and does it where the page marks it.
    Doing,
    /// Reads every reason as well, once each, and asks to be shown where every time.
    Asking,
}

/// Steps, words read, presses and minutes of a guided call, as the table has them.
fn played(browser: &Browser, call: &str, reader: Reader) -> (String, f64) {
    browser.run(COUNT, &[]);
    browser.press_at(Hand::Mouse, &format!("[data-act={call}]"));
    browser.wait_until("document.querySelector('[data-next]')");
    if reader == Reader::Asking {
        browser.press_at(Hand::Mouse, "[data-act=guide-why]");
        browser.wait_until("document.querySelector('.guide-why')");
    }
    let (mut steps, mut done, mut words) = (0, 0, 0);
    let (mut before, mut reasons) = (String::new(), BTreeSet::new());
    while !browser.has("dialog[open] [data-act='hand-over']") {
        let said = text_of(browser, ".guide-do");
        if said != before {
            steps += 1;
            words += words_in(&said);
            let reason = text_of(browser, ".guide-why");
            if reasons.insert(reason.clone()) {
                words += words_in(&reason);
            }
            before = said;
        }
        done += 1;
        assert!(done < 400, "never over: {before}");
        follow(browser, reader);
    }
    browser.press_at(Hand::Mouse, "dialog[open] [data-act='hand-over']");
    browser.wait_until("document.querySelector('.over a')");
    let presses = browser.run("return window.presses;", &[]).as_u64().unwrap_or_default();
    let minutes = words as f64 / WORDS_A_MINUTE + presses as f64 * A_PRESS / 60.0;
    (format!("{steps} | {words} | {presses} | {minutes:.1}"), minutes)
}

/// A call as the guide leads it, by who only does what it says and by who asks for everything; the least it takes.
fn timed(call: &str) -> Option<f64> {
    let table = std::fs::read_to_string(tree::root().join("docs/tasks.md")).expect("docs/tasks.md");
    let (mut amiss, mut least) = (Vec::new(), None);
    for (reader, name) in [(Reader::Doing, "doing"), (Reader::Asking, "asking")] {
        let browser = Browser::open_page(Screen::DESK)?;
        let (row, minutes) = played(&browser, call, reader);
        let row = format!("| {call} call, {name} | {row} |");
        if !table.contains(&row) {
            amiss.push(row);
        }
        least.get_or_insert(minutes);
    }
    assert!(amiss.is_empty(), "docs/tasks.md does not say:\n{}", amiss.join("\n"));
    least
}

#[test]
fn the_first_call_takes_what_its_table_says_and_five_minutes_at_the_most() {
    let least = timed("first");
    assert!(least.is_none_or(|least| least <= FIRST_CALL), "{least:?}");
}

#[test]
fn the_second_call_takes_what_its_table_says() {
    timed("second");
}

fn text_of(browser: &Browser, selector: &str) -> String {
    let text =
        browser.run("return document.querySelector(arguments[0])?.innerText ?? '';", &[json!(selector)]);
    text.as_str().unwrap_or_default().to_owned()
}

fn words_in(text: &str) -> usize {
    text.split_whitespace().count()
}

/// Does by mouse what is marked as next, shown where by the guide or not.
fn follow(browser: &Browser, reader: Reader) {
    if reader == Reader::Asking {
        browser.press_at(Hand::Mouse, "[data-act=guide-show]");
        browser.wait_until("document.activeElement.hasAttribute('data-next')");
    }
    browser.wait_until("document.querySelector('[data-next]')");
    let next = browser.css("[data-next]");
    let value = next.attribute("data-next").unwrap_or_default();
    if value.is_empty() {
        let dot = ".point[data-next] circle:not(.hit)";
        browser.press_at(Hand::Mouse, if browser.has(dot) { dot } else { "[data-next]" });
    } else {
        browser.choose(Hand::Mouse, &next, &value);
    }
    // What was done is drawn before the guide is asked again.
    browser.run_until_answered("setTimeout(arguments[arguments.length - 1], 80);", &[]);
}
