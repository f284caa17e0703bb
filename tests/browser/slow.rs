//! How long the page takes to its first usable drill on a slow processor. A measurement, not a check: run it with
//! `cargo test -p tankwright-tests --test browser slow_start -- --ignored --nocapture` on the delivered build.

use bench::Mode;
use drill::Order;
use serde_json::json;
use tankwright_tests::browser::{Browser, Screen};

/// Presses Start as soon as it is there, and notes when the drill can be used.
const NOTE: &str = "
window.tasks = [];
new PerformanceObserver((list) => {
    for (const one of list.getEntries()) window.tasks.push([one.startTime, one.duration]);
}).observe({ type: 'longtask', buffered: true });
new MutationObserver(() => {
    const start = document.querySelector('[data-act=start]');
    if (start && !window.pressed) {
        window.pressed = performance.now();
        start.click();
    }
    if (document.querySelector('.drill [data-act]') && !window.usable) {
        window.usable = performance.now();
    }
}).observe(document, { subtree: true, childList: true });
";

#[test]
#[ignore = "measures time"]
fn slow_start() {
    let Some(browser) = Browser::blank(Screen::PHONE) else { return };
    browser.command("Page.addScriptToEvaluateOnNewDocument", json!({ "source": NOTE }));
    browser.slow_down(4.0);
    for seed in [5, 6, 7] {
        let code = drill::code::encode(&Order::chance(seed, Mode::Coached)).expect("the drill has a code");
        browser.go("");
        browser.wait_until_started();
        browser.run("localStorage.clear();", &[]);
        // Another query, so that the page is loaded anew.
        browser.go(&format!("?{seed}#/drill/{code}"));
        browser.wait_until("window.usable");
        let took = browser.run(
            "return [window.pressed, window.usable - window.pressed, window.usable,
                Math.max(0, ...window.tasks.filter(([at]) => at >= window.pressed - 1).map(([, took]) => took))];",
            &[],
        );
        let ms = |at: usize| took[at].as_f64().unwrap_or_default();
        println!(
            "{:.0} ms to the start, {:.0} ms to deal the drill, {:.0} ms to its first use; longest task since the start {:.0} ms",
            ms(0),
            ms(1),
            ms(2),
            ms(3)
        );
    }
}
