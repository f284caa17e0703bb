//! What the page says and asks for behind the learner's back: console messages and requests.

use serde_json::{Value, json};

use super::Browser;

/// A line of the console.
#[derive(Clone, PartialEq, Eq, Debug)]
pub struct Message {
    /// `SEVERE`, `WARNING`, `INFO` or `DEBUG`.
    pub level: String,
    /// What it says.
    pub text: String,
}

impl Browser {
    /// Console messages since they were last taken.
    #[track_caller]
    pub fn messages(&self) -> Vec<Message> {
        self.listen();
        self.heard.take()
    }

    /// Reads the console into memory.
    fn listen(&self) {
        let part = |entry: &Value, name: &str| entry[name].as_str().unwrap_or_default().to_owned();
        let log = self.log("browser");
        // The browser's own first sheet complains by itself where there is no network; that is none of ours.
        let ours = |message: &Message| !message.text.starts_with("chrome:");
        let messages = log
            .iter()
            .map(|entry| Message { level: part(entry, "level"), text: part(entry, "message") })
            .filter(ours);
        self.heard.borrow_mut().extend(messages);
    }

    /// Waits for a console message that contains a text, and takes none.
    #[track_caller]
    pub fn wait_for_message(&self, text: &str) -> Message {
        let found = self.wait(|| {
            self.listen();
            self.heard.borrow().iter().find(|message| message.text.contains(text)).cloned()
        });
        found.unwrap_or_else(|| panic!("no message with {text:?}, only {:?}", self.messages()))
    }

    /// Addresses that the page asked for since they were last asked for.
    #[track_caller]
    pub fn requests(&self) -> Vec<String> {
        let parsed = self.log("performance").into_iter().filter_map(|entry| {
            let event: Value = serde_json::from_str(entry["message"].as_str()?).ok()?;
            let event = &event["message"];
            // The browser's own first sheet, before any page of ours.
            if event["params"]["documentURL"].as_str().is_some_and(|asker| asker.starts_with("chrome:")) {
                return None;
            }
            let url = match event["method"].as_str()? {
                "Network.requestWillBeSent" => &event["params"]["request"]["url"],
                "Network.webSocketCreated" | "Network.webTransportCreated" => &event["params"]["url"],
                _ => return None,
            };
            url.as_str().map(str::to_owned)
        });
        parsed.collect()
    }

    /// Fails on any console message and on any request to another origin.
    #[track_caller]
    pub fn assert_quiet(&self) {
        let messages = self.messages();
        assert!(messages.is_empty(), "the console has messages: {messages:#?}");
        let inside = |url: &str| {
            url.starts_with(&self.address)
                || ["data:", "blob:", "about:"].iter().any(|own| url.starts_with(own))
        };
        let requests = self.requests();
        let foreign: Vec<_> = requests.iter().filter(|url| !inside(url)).collect();
        assert!(foreign.is_empty(), "requests to another origin: {foreign:#?}");
    }

    #[track_caller]
    fn log(&self, kind: &str) -> Vec<Value> {
        let entries = self.driver.post("se/log", &json!({ "type": kind })).unwrap();
        entries.as_array().cloned().unwrap_or_default()
    }
}
