//! The browser's driver: a process on a free port, spoken to by the W3C WebDriver protocol.

use std::fs;
use std::io::{BufRead, BufReader};
use std::path::PathBuf;
use std::process::{Child, Command, Stdio};
use std::sync::atomic::{AtomicU32, Ordering};
use std::time::Duration;

use serde_json::{Value, json};
use ureq::Agent;

use super::Screen;

/// Nothing of the browser's own: no first run, no updates, no reports.
const FLAGS: [&str; 11] = [
    "--headless",
    "--no-sandbox",
    "--disable-gpu",
    "--no-first-run",
    "--disable-background-networking",
    "--disable-component-update",
    "--disable-sync",
    "--disable-dev-shm-usage",
    "--disable-default-apps",
    "--force-color-profile=srgb",
    "--hide-scrollbars",
];

/// Longest that one request may take; a fold of many attempts in the page is the longest of them.
const LIMIT: Duration = Duration::from_secs(300);

/// What the driver says when it does not do what it is asked.
#[derive(Clone, PartialEq, Eq)]
pub struct DriverError {
    /// The protocol's own word, such as `stale element reference`.
    pub kind: String,
    /// More about it.
    pub message: String,
}

impl std::fmt::Debug for DriverError {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        write!(f, "{}: {}", self.kind, self.message)
    }
}

/// A running driver with one browser.
pub(super) struct Driver {
    process: Child,
    agent: Agent,
    base: String,
    profile: PathBuf,
}

impl Driver {
    pub(super) fn start(screen: Screen) -> Self {
        let mut process = Command::new("chromedriver")
            .arg("--port=0")
            .stdout(Stdio::piped())
            .stderr(Stdio::null())
            .spawn()
            .expect("chromedriver starts (tests/run installs it)");
        let port = port_said(&mut process);
        let agent = Agent::config_builder()
            .http_status_as_error(false)
            // Loopback, whatever the surroundings say about proxies.
            .proxy(None)
            .timeout_global(Some(LIMIT))
            .build()
            .new_agent();
        let base = format!("http://127.0.0.1:{port}/session");
        let mut driver = Self { process, agent, base, profile: fresh_profile() };
        let wanted = json!({ "capabilities": { "alwaysMatch": driver.wanted(screen) } });
        let session = driver.send("POST", "", Some(&wanted)).expect("a browser starts");
        let id = session["sessionId"].as_str().expect("the session has a name");
        driver.base = format!("{}/{id}", driver.base);
        let limit = LIMIT.as_millis() as u64;
        driver.post("timeouts", &json!({ "script": limit, "pageLoad": limit })).unwrap();
        driver
    }

    fn wanted(&self, screen: Screen) -> Value {
        let mut flags: Vec<String> = FLAGS.map(String::from).into();
        flags.push(format!("--user-data-dir={}", self.profile.display()));
        let mut options = json!({ "args": flags });
        if let Some(phone) = screen.options() {
            options["mobileEmulation"] = phone;
        }
        json!({
            "browserName": "chrome",
            "goog:chromeOptions": options,
            "goog:loggingPrefs": { "browser": "ALL", "performance": "ALL" },
        })
    }

    pub(super) fn get(&self, path: &str) -> Result<Value, DriverError> {
        self.send("GET", path, None)
    }

    pub(super) fn post(&self, path: &str, body: &Value) -> Result<Value, DriverError> {
        self.send("POST", path, Some(body))
    }

    /// One command of the browser's own debugging protocol.
    pub(super) fn command(&self, name: &str, params: Value) -> Result<Value, DriverError> {
        self.post("goog/cdp/execute", &json!({ "cmd": name, "params": params }))
    }

    fn send(&self, method: &str, path: &str, body: Option<&Value>) -> Result<Value, DriverError> {
        let url = if path.is_empty() { self.base.clone() } else { format!("{}/{path}", self.base) };
        let answer = match (method, body) {
            ("DELETE", _) => self.agent.delete(&url).call(),
            (_, Some(body)) => self.agent.post(&url).content_type("application/json").send(body.to_string()),
            (_, None) => self.agent.get(&url).call(),
        };
        let lost = |error: ureq::Error| DriverError { kind: "no answer".into(), message: error.to_string() };
        let mut answer = answer.map_err(lost)?;
        let text = answer.body_mut().with_config().limit(64 << 20).read_to_string().map_err(lost)?;
        let mut parsed: Value = serde_json::from_str(&text)
            .map_err(|_| DriverError { kind: "not understood".into(), message: text.clone() })?;
        let value = parsed["value"].take();
        match value["error"].as_str() {
            Some(kind) if !answer.status().is_success() => {
                let message = value["message"].as_str().unwrap_or_default();
                Err(DriverError {
                    kind: kind.into(),
                    message: message.lines().next().unwrap_or_default().into(),
                })
            }
            _ => Ok(value),
        }
    }
}

impl Drop for Driver {
    fn drop(&mut self) {
        // The browser goes with its session, then the driver, then what the browser wrote.
        drop(self.send("DELETE", "", None));
        drop(self.process.kill());
        drop(self.process.wait());
        drop(fs::remove_dir_all(&self.profile));
    }
}

/// The port that the driver chose: it says so once it listens.
fn port_said(process: &mut Child) -> u16 {
    let mut lines = BufReader::new(process.stdout.take().expect("the driver's output is ours")).lines();
    let port = lines
        .by_ref()
        .map_while(Result::ok)
        .find_map(|line| line.split_once("successfully on port ")?.1.trim_end_matches('.').parse().ok())
        .expect("the driver says its port");
    // Keep reading, or a full pipe stops the driver.
    std::thread::spawn(move || lines.for_each(drop));
    port
}

fn fresh_profile() -> PathBuf {
    static COUNT: AtomicU32 = AtomicU32::new(0);
    let number = COUNT.fetch_add(1, Ordering::Relaxed);
    std::env::temp_dir().join(format!("tankwright-profile-{}-{number}", std::process::id()))
}
