//! What a learner's machine may be like: dark colours, slow, asked for less motion.

use std::time::Instant;

use serde_json::{Value, json};

use super::{Browser, PATIENCE};

impl Browser {
    /// Asks for light writing on dark, or not; still pictures in both, so that nothing is caught half way.
    pub fn set_dark(&self, dark: bool) {
        let scheme = if dark { "dark" } else { "light" };
        self.command(
            "Emulation.setEmulatedMedia",
            json!({ "features": [
                { "name": "prefers-color-scheme", "value": scheme },
                { "name": "prefers-reduced-motion", "value": "reduce" },
            ] }),
        );
    }

    /// Makes the processor this many times slower.
    pub fn slow_down(&self, times: f64) {
        self.command("Emulation.setCPUThrottlingRate", json!({ "rate": times }));
    }

    /// Cuts the network, or mends it.
    pub fn set_offline(&self, offline: bool) {
        self.command("Network.enable", json!({}));
        self.command(
            "Network.emulateNetworkConditions",
            json!({ "offline": offline, "latency": 0, "downloadThroughput": -1, "uploadThroughput": -1 }),
        );
    }

    /// Sends one command of the browser's own debugging protocol.
    #[track_caller]
    pub fn command(&self, name: &str, params: Value) -> Value {
        self.driver.command(name, params).unwrap()
    }

    /// Runs the body of a function on the page and returns what it returns.
    #[track_caller]
    pub fn run(&self, body: &str, args: &[Value]) -> Value {
        self.driver.post("execute/sync", &json!({ "script": body, "args": args })).unwrap()
    }

    /// Runs the body of a function on the page that answers by calling its last argument.
    #[track_caller]
    pub fn run_until_answered(&self, body: &str, args: &[Value]) -> Value {
        self.driver.post("execute/async", &json!({ "script": body, "args": args })).unwrap()
    }

    /// Waits until an expression is true on the page.
    #[track_caller]
    pub fn wait_until(&self, expression: &str) {
        let body = format!("return Boolean({expression});");
        self.wait(|| (self.run(&body, &[]) == Value::Bool(true)).then_some(())).unwrap_or_else(|| {
            panic!(
                "still not so after {PATIENCE:?}: {expression}\nConsole: {:?}\n{}",
                self.messages(),
                self.text()
            )
        });
    }

    /// Waits until the page shows a text.
    #[track_caller]
    pub fn wait_for_text(&self, text: &str) {
        self.wait(|| self.text().contains(text).then_some(()))
            .unwrap_or_else(|| panic!("no {text:?} after {PATIENCE:?}; the page says:\n{}", self.text()));
    }

    /// All the text that the page shows.
    #[track_caller]
    pub fn text(&self) -> String {
        self.run("return document.body.innerText;", &[]).as_str().unwrap_or_default().to_owned()
    }

    /// Asks again and again until there is an answer or patience ends.
    pub(super) fn wait<T>(&self, mut ask: impl FnMut() -> Option<T>) -> Option<T> {
        let began = Instant::now();
        loop {
            if let Some(answer) = ask() {
                return Some(answer);
            }
            if began.elapsed() > PATIENCE {
                return None;
            }
            std::thread::sleep(std::time::Duration::from_millis(30));
        }
    }
}
