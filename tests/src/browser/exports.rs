//! Functions that the page exports from WebAssembly.

use serde_json::{Value, json};

use super::Browser;

/// The module is the one that the page itself has started, so nothing is started twice.
const CALL: &str = "
const [name, args, done] = arguments;
import(new URL('tankwright.js', document.baseURI).href)
    .then((page) => done({ value: page[name](...args) ?? null }))
    .catch((error) => done({ error: String(error) }));
";

impl Browser {
    /// Calls an exported function of the page with these arguments and returns what it returns. The function is
    /// one of `app/src/exports.rs`; what it gives has to fit JSON.
    #[track_caller]
    pub fn call_export(&self, name: &str, args: &[Value]) -> Value {
        let mut answer = self.run_until_answered(CALL, &[json!(name), json!(args)]);
        if let Some(error) = answer["error"].as_str() {
            panic!("{name} in WebAssembly: {error}\nConsole: {:?}", self.messages());
        }
        answer["value"].take()
    }

    /// As [`Browser::call_export`], for functions that return a string.
    #[track_caller]
    pub fn call_export_text(&self, name: &str, args: &[Value]) -> String {
        let value = self.call_export(name, args);
        value.as_str().unwrap_or_else(|| panic!("{name} returned no text but {value}")).to_owned()
    }
}
