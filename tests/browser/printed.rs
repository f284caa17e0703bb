//! The service report on paper: what the customer said, every reading, what was wrong, what puts it right, what was
//! written, a second fault, and the cautions; nothing else of the page, in each language.

use std::rc::Rc;

use bench::{Action, Cover, MeterFunction, Shown};
use plant::{Place, Screw};
use serde_json::json;
use tankwright_tests::browser::{Browser, Screen};
use tankwright_tests::tree;
use words::{Book, Language, Units, Voice};

use super::calls::{self, Call};
use super::work::keep;

/// Width of the text on a sheet of US letter with the browser's own margins, in CSS pixels.
const PAPER: u32 = 720;
/// More sheets of paper than a report takes.
const MOST: usize = 8;

fn voice(language: Language) -> Voice {
    let book = match language {
        Language::English => Book::english(),
        other => {
            let file = tree::root().join(format!("assets/words/{}.ftl", other.short()));
            Book::of(other, &std::fs::read_to_string(file).expect("the book"))
        }
    };
    Voice::new(Rc::new(book), Units::Customary)
}

/// Whether an act is of a kind.
type Is = fn(&Action) -> bool;

/// Acts that carry a caution of their own.
const CAUTIONS: [(Is, &str); 4] = [
    (|act| matches!(act, Action::Breaker { on: true, .. }), "caution-act-power"),
    (|act| matches!(act, Action::ReliefLever { up: true } | Action::Drain { .. }), "caution-act-hot-water"),
    (|act| matches!(act, Action::Replace { .. }), "caution-act-replace"),
    (|act| matches!(act, Action::Cover { which: Cover::PanelFront, off: true }), "caution-act-panel-front"),
];

/// A house with two faults, worked in a hurry with a finding on the first.
fn two_faults() -> Call {
    let order = r#"{"seed": 11, "fault": "F41", "second": "F01", "heater": "plain-40", "mode": "solo"}"#;
    let order = drill::Order::read(order).expect("an order");
    let mut attempt = drill::Attempt::new("Bench 3", order);
    let covers = [Cover::Lower, Cover::LowerInsulation, Cover::LowerShield];
    let read = |red: Screw, black: Screw| Action::Meter {
        function: MeterFunction::Volts,
        red: red.into(),
        black: black.into(),
    };
    attempt.actions = covers.map(|which| Action::Cover { which, off: true }).into();
    attempt.actions.extend([
        read(Screw::LEa, Screw::LEb),
        Action::Breaker { slot: 2, on: false },
        Action::Breaker { slot: 2, on: true },
        Action::Look { at: Place::Drain },
        Action::Finding { fault: Some(plant::FaultId::F41), evidence: vec![4] },
        Action::HandOver,
    ]);
    let drill = drill::make(&attempt.order).expect("the drill can be made");
    Call { attempt, drill }
}

/// What is on the sheet before the printer has it.
fn on_paper(browser: &Browser, width: u32) {
    browser.show_at(width, 900, false, false);
    browser.command("Emulation.setEmulatedMedia", json!({ "media": "print" }));
}

/// Text with all space made one.
fn even(text: &str) -> String {
    text.split_whitespace().collect::<Vec<_>>().join(" ")
}

fn printed(language: Language, name: &str, call: &Call) {
    let Some(browser) = Browser::open_page(Screen::DESK) else { return };
    let code = drill::code::encode(&call.attempt.order).unwrap_or_else(|_| call.attempt.order.write());
    keep(&browser, &code, &call.attempt.learner, &call.attempt.actions);
    browser.run("localStorage.setItem('tankwright.language', arguments[0]);", &[json!(language.short())]);
    browser.go("?printed#/debrief");
    browser.wait_until_started();
    browser.wait_until("document.querySelector('.report h1') && !document.querySelector('.filling')");
    // A printer takes the sheet as the desk's width made it.
    for width in [Screen::DESK.width, PAPER] {
        on_paper(&browser, width);
        let shown = browser.run(
            "return [...document.querySelectorAll('button, nav, dialog, .top, .footer, .strip, svg')]
                .filter((one) => one.checkVisibility() && one.getClientRects().length > 0).map((one) => one.outerHTML.slice(0, 60));",
            &[],
        );
        assert_eq!(shown, json!([]), "{name}: only the report is on the paper, {width} wide");
    }
    let said = even(&browser.text());
    let voice = voice(language);
    let session = call.session();
    let has = |what: &str, text: String| {
        assert!(said.contains(&even(&text)), "{name}: {what}, {text:?}, is not in\n{said}");
    };
    has("the heading", voice.text("debrief-report"));
    let title = call.drill.title;
    has("the call", title.call.to_string());
    has("the house", format!("{} {}", title.house, title.street_name()));
    let plate = session.home.plant.plate;
    has("the plate's storage", Units::Customary.size(plate.nominal));
    has("the plate's volts", format!("{:.0} V", plate.element.volts.get()));
    has("the learner", call.attempt.learner.clone());
    has("the complaint", voice.complaint(&session.job.account));
    has("the fault", voice.fault(call.drill.fault.id));
    has("its remedy", voice.fault_remedy(call.drill.fault.id));
    if let Some(second) = &call.drill.second {
        has("the heading of the second", voice.text("debrief-second-fault"));
        has("the second", voice.fault(second.id));
        has("the second's remedy", voice.fault_remedy(second.id));
    }
    let written = session.me.findings.last().expect("a finding was written");
    has("the finding", voice.fault(written.fault.expect("a fault was named")));
    let mut readings = 0;
    for entry in &session.log {
        has("an act", voice.action(&entry.action));
        if matches!(
            entry.outcome.shown,
            Shown::Meter { .. } | Shown::Clamp { .. } | Shown::Temperature { .. }
        ) {
            has("a reading", voice.shown(&entry.outcome.shown));
            readings += 1;
        }
    }
    assert!(readings > 0, "{name} has readings");
    has("the general caution", voice.text("shell-caution"));
    for (is, caution) in CAUTIONS {
        let done = call.attempt.actions.iter().any(is);
        let there = said.contains(&even(&voice.text(caution)));
        assert_eq!(there, done, "{name}: {caution} is on the paper where such an act was done");
    }
    let sideways = browser.run("return document.querySelector('.report').scrollWidth - innerWidth;", &[]);
    assert!(sideways.as_f64().is_some_and(|over| over <= 0.0), "{name} runs off the paper by {sideways}");
    browser.picture_of_all(&format!("printed-{name}-{}", language.short()));
    let sheets = browser.print(&format!("printed-{name}-{}", language.short()));
    assert!(sheets.starts_with(b"%PDF"));
    let count = sheets.windows(b"/Type /Page\n".len()).filter(|at| *at == b"/Type /Page\n").count();
    assert!((1..=MOST).contains(&count), "{name} takes {count} sheets");
    browser.assert_quiet();
}

#[test]
fn a_report_holds_the_whole_job_on_paper() {
    for language in [Language::English, Language::Spanish] {
        printed(language, "whole", &calls::whole());
        printed(language, "two", &two_faults());
    }
}
