//! The whole service call in the browser: once by mouse, once by keyboard alone in each language, once by touch on a
//! phone. The page is loaded again in the middle of each.

use bench::{Action, MeterFunction};
use tankwright_tests::browser::{Browser, Hand, Screen};
use words::Language;

use super::calls::{self, Call};
use super::speech::voice;
use super::work::Work;

/// Acts after which a picture is kept, by what was just done.
fn worth_a_picture(action: &Action) -> Option<&'static str> {
    use bench::{Cover, Writing};
    Some(match action {
        Action::Read { what: Writing::Directory } => "load-center",
        Action::Cover { which: Cover::UpperShield, off: true } => "upper",
        Action::Meter { function: MeterFunction::Ohms, .. } => "reading",
        Action::Finding { .. } => "finding",
        Action::Drain { opening } if *opening > 0.0 => "drain",
        Action::Replace { .. } => "van",
        Action::Bucket { .. } => "taps",
        _ => return None,
    })
}

fn run(screen: Screen, hand: Hand, language: Language) {
    let call = calls::whole();
    let code = drill::code::encode(&call.attempt.order).expect("the call has a code");
    let Some(browser) = Browser::open_page(screen) else { return };
    speak(&browser, hand, language);
    start(&browser, hand, &call, &code);
    let mut work = Work::begun(&browser, hand);
    let middle = call.attempt.actions.iter().position(|action| matches!(action, Action::Finding { .. }));
    for (at, action) in call.attempt.actions.iter().enumerate() {
        if Some(at) == middle {
            work.reload();
        }
        work.act(action);
        if let Some(name) = worth_a_picture(action) {
            picture(&browser, screen, language, name);
        }
    }
    browser.press_at(hand, ".over a");
    assert_debrief(&browser, hand, &call, language);
    if hand == Hand::Keys {
        along_the_debrief(&browser);
    }
    picture(&browser, screen, language, "debrief");
    assert_spoken(&browser, language);
    browser.assert_quiet();
}

/// Chooses a language on the first page, by the same hand.
fn speak(browser: &Browser, hand: Hand, language: Language) {
    if language != Language::English {
        browser.press_at(hand, &format!("[data-act=language][lang={}]", language.tag()));
    }
    assert_spoken(browser, language);
}

#[track_caller]
fn assert_spoken(browser: &Browser, language: Language) {
    browser.wait_until(&format!("document.documentElement.lang === '{}'", language.tag()));
}

fn picture(browser: &Browser, screen: Screen, language: Language, name: &str) {
    from_the_top(browser);
    let of = if language == Language::English { String::new() } else { format!("{}-", language.short()) };
    browser.picture(&format!("{of}call-{name}-{}", screen.name()));
}

/// The debrief is moved through by keys alone: along the job, and to an act of the list, which is then the one looked at.
fn along_the_debrief(browser: &Browser) {
    let strip = browser.reach(Hand::Keys, ".strip input");
    browser.tab_to(&strip);
    let before = strip.attribute("aria-valuetext");
    browser.keys("ArrowRight", 20);
    assert_ne!(strip.attribute("aria-valuetext"), before, "the arrows move the job along");
    let act = browser.reach(Hand::Keys, ".steps li:nth-child(3) button");
    browser.press(Hand::Keys, &act);
    browser.wait_until("document.querySelector('.steps li:nth-child(3) [aria-current]')");
}

/// Scrolls everything but the log back to where it begins.
fn from_the_top(browser: &Browser) {
    browser.run(
        "for (const one of document.querySelectorAll('html, body *')) {
            if (one.scrollTop && !one.classList.contains('log')) one.scrollTop = 0;
        }",
        &[],
    );
}

/// Through the door: the code typed at the first page, or its link opened.
fn start(browser: &Browser, hand: Hand, call: &Call, code: &str) {
    if hand == Hand::Keys {
        let field = browser.reach(hand, "[data-field=code]");
        browser.write(hand, &field, &code.to_lowercase());
        browser.key("Enter");
    } else {
        browser.go(&format!("#/drill/{code}"));
    }
    let field = browser.reach(hand, "[data-field=learner]");
    browser.write(hand, &field, &call.attempt.learner);
    browser.press_at(hand, "[data-act=start]");
}

/// The debrief shows the four accounts as the same fold gives them natively, and offers the very attempt.
#[track_caller]
fn assert_debrief(browser: &Browser, hand: Hand, call: &Call, language: Language) {
    let score = call.score();
    for (account, (got, of)) in drill::Account::ALL.iter().zip(score.reached.iter().zip(score.of)) {
        let name = serde_json::to_value(account).expect("an account has a name");
        let shown = browser.css(&format!("[data-account={}] .points", name.as_str().unwrap_or_default()));
        let text = browser.run("return arguments[0].textContent;", &[shown.reference()]);
        let voice = voice(language);
        let of = voice.filled("debrief-of", &[("of", of.to_string().into())]);
        assert_eq!(text, format!("{got} {of}"), "{account:?}");
    }
    // What is still being drawn moves the rest about.
    browser.wait_until("!document.querySelector('.filling')");
    browser.press_at(hand, "[data-door=hand-in] summary");
    let text = browser.reach(hand, "[data-copy=attempt]").property("value");
    assert_eq!(text, call.attempt.write(), "the attempt that is handed in");
}

#[test]
fn a_whole_call_by_mouse() {
    run(Screen::DESK, Hand::Mouse, Language::English);
}

#[test]
fn a_whole_call_by_keyboard_alone() {
    run(Screen::LAPTOP, Hand::Keys, Language::English);
}

#[test]
fn a_whole_call_by_keyboard_alone_in_spanish() {
    run(Screen::LAPTOP, Hand::Keys, Language::Spanish);
}

#[test]
fn a_whole_call_by_touch_on_a_phone() {
    run(Screen::PHONE, Hand::Touch, Language::English);
}
