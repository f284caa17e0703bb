//! How smoothly the page answers on a slow processor, while a job is worked and while its debrief is scrubbed. A
//! measurement, not a check: `cargo test -p tankwright-tests --test browser frame_times -- --ignored --nocapture` on
//! the delivered build.

use bench::Action;
use serde_json::{Value, json};
use tankwright_tests::browser::{Browser, Hand, Screen};

use super::calls;
use super::work::{Work, keep};

/// Notes every frame, every long task and every shift of the layout that no input explains.
const NOTE: &str = "
window.noted = () => {
    window.frames = [];
    window.tasks = [];
    window.shifts = 0;
};
window.noted();
const watch = (type, note) => new PerformanceObserver((list) => list.getEntries().forEach(note)).observe({ type });
watch('longtask', (entry) => window.tasks.push(entry.duration));
watch('layout-shift', (entry) => { if (!entry.hadRecentInput) window.shifts += entry.value; });
let last;
const frame = (now) => {
    if (last !== undefined) window.frames.push(now - last);
    last = now;
    requestAnimationFrame(frame);
};
requestAnimationFrame(frame);
";

/// Moves the debrief's slider from one end to the other, a step a frame, and back.
const SCRUB: &str = "
const answered = arguments[arguments.length - 1];
const slider = document.querySelector('.debrief-main input[type=range]');
const [low, high] = [Number(slider.min), Number(slider.max)];
const steps = 60;
let at = 0;
const move = () => {
    const part = at <= steps ? at / steps : 2 - at / steps;
    slider.value = String(low + (high - low) * part);
    slider.dispatchEvent(new InputEvent('input', { bubbles: true }));
    at += 1;
    if (at > 2 * steps) setTimeout(answered, 300); else requestAnimationFrame(move);
};
requestAnimationFrame(move);
";

fn told(browser: &Browser, what: &str) {
    let noted = browser.run("return [window.frames, window.tasks, window.shifts];", &[]);
    let numbers = |of: &Value| -> Vec<f64> {
        let mut all: Vec<f64> = of.as_array().into_iter().flatten().filter_map(Value::as_f64).collect();
        all.sort_by(f64::total_cmp);
        all
    };
    let (frames, tasks) = (numbers(&noted[0]), numbers(&noted[1]));
    let share = |part: f64| frames.get((frames.len() as f64 * part) as usize).copied().unwrap_or_default();
    println!(
        "{what}: {} frames, half of them under {:.0} ms, 95 of 100 under {:.0} ms; {} tasks over 50 ms, the longest {:.0} ms; layout shift {:.3}",
        frames.len(),
        share(0.5),
        share(0.95),
        tasks.len(),
        tasks.last().copied().unwrap_or_default(),
        noted[2].as_f64().unwrap_or_default(),
    );
    browser.run("window.noted();", &[]);
}

#[test]
#[ignore = "measures time"]
fn frame_times() {
    let Some(browser) = Browser::blank(Screen::DESK) else { return };
    browser.command("Page.addScriptToEvaluateOnNewDocument", json!({ "source": NOTE }));
    let call = calls::whole();
    let code = drill::code::encode(&call.attempt.order).expect("the call has a code");
    browser.go("");
    browser.wait_until_started();
    keep(&browser, &code, "Bench 4", &[]);
    browser.go("?frames#/drill");
    let mut work = Work::begun(&browser, Hand::Mouse);
    browser.slow_down(4.0);
    told(&browser, "opening");
    for action in &call.attempt.actions {
        work.act(action);
        if matches!(action, Action::HandOver) {
            break;
        }
    }
    told(&browser, "working the whole call");
    browser.press_at(Hand::Mouse, ".over a");
    browser.wait_until("document.querySelector('.debrief') && !document.querySelector('.debrief.filling')");
    told(&browser, "opening the debrief");
    browser.run_until_answered(SCRUB, &[]);
    told(&browser, "scrubbing it");
}
