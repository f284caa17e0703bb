//! The accessibility checker, and pictures.

use std::fs;
use std::path::{Path, PathBuf};

use base64::Engine as _;
use serde_json::{Value, json};

use super::Browser;
use crate::tree;

/// Runs the checker, with the rule for small targets that it leaves out by itself (WCAG 2.2, 2.5.8), and answers with each violation on a line of its own.
const CHECK: &str = "
const done = arguments[arguments.length - 1];
// What lies half under the page's fixed edges, or out of view, is scrolled to: its size is not what is seen of it.
const cut = (node) => {
    const one = document.querySelector(node.target[0]);
    const area = one.getBoundingClientRect();
    return [area.top + 1, area.bottom - 1].some((y) => {
        const over = document.elementFromPoint(area.left + area.width / 2, y);
        return !over || over.closest('.top, .foot, .footer, .debrief-tabs');
    });
};
axe.run(document, { resultTypes: ['violations'], rules: { 'target-size': { enabled: true } } }).then(
    (all) => done(all.violations
        .map((one) => ({ ...one, nodes: one.id === 'target-size' ? one.nodes.filter((node) => !cut(node)) : one.nodes }))
        .filter((one) => one.nodes.length > 0)
        .map((one) => one.id + ' (' + one.impact + '): ' + one.help + ' ' +
            one.nodes.map((node) => node.target.join(' ') + ' [' + node.failureSummary + ']').join('; '))),
    (error) => done(['the checker failed: ' + error]));
";

impl Browser {
    /// Runs the accessibility checker over the page as it is; fails on any violation.
    #[track_caller]
    pub fn assert_accessible(&self) {
        if self.run("return typeof axe;", &[]) == "undefined" {
            self.run(&checker(), &[]);
        }
        let found = self.run_until_answered(CHECK, &[]);
        let violations =
            found.as_array().cloned().unwrap_or_else(|| vec![json!("the checker did not answer")]);
        let lines: Vec<_> = violations.iter().filter_map(Value::as_str).collect();
        assert!(lines.is_empty(), "not accessible:\n{}", lines.join("\n"));
    }

    /// Keeps a picture of what is in view as `tests/out/NAME.png`.
    #[track_caller]
    pub fn picture(&self, name: &str) -> PathBuf {
        self.capture(name, json!({ "format": "png", "optimizeForSpeed": true }))
    }

    /// Keeps a picture of the whole page, below the fold too.
    #[track_caller]
    pub fn picture_of_all(&self, name: &str) -> PathBuf {
        let height = self.run("return innerHeight;", &[]);
        let path = self.capture(
            name,
            json!({ "format": "png", "optimizeForSpeed": true, "captureBeyondViewport": true }),
        );
        // For the picture the browser made the window as tall as the page.
        self.wait_until(&format!("innerHeight === {height}"));
        path
    }

    /// Keeps a picture of a piece of the page: left, top, width and height.
    #[track_caller]
    pub fn picture_of(&self, [x, y, width, height]: [f64; 4], name: &str) -> PathBuf {
        let clip = json!({ "x": x, "y": y, "width": width, "height": height, "scale": 2 });
        self.capture(name, json!({ "format": "png", "clip": clip }))
    }

    /// The page as it is printed, kept as `tests/out/NAME.pdf`.
    #[track_caller]
    pub fn print(&self, name: &str) -> Vec<u8> {
        let answer = self.command("Page.printToPDF", json!({ "printBackground": false }));
        self.keep(&format!("{name}.pdf"), &answer["data"]).1
    }

    #[track_caller]
    fn keep(&self, file: &str, encoded: &Value) -> (PathBuf, Vec<u8>) {
        let encoded = encoded.as_str().expect("a picture");
        let bytes = base64::engine::general_purpose::STANDARD.decode(encoded).expect("a picture's bytes");
        let path = tree::out().join(file);
        fs::write(&path, &bytes).expect("tests/out can be written");
        (path, bytes)
    }

    #[track_caller]
    fn capture(&self, name: &str, how: Value) -> PathBuf {
        let answer = self.command("Page.captureScreenshot", how);
        self.keep(&format!("{name}.png"), &answer["data"]).0
    }
}

/// The checker's source, put beside the Python packages by `tests/run tools`.
fn checker() -> String {
    let path = std::env::var_os("TANKWRIGHT_AXE").map(PathBuf::from);
    let path = path.unwrap_or_else(|| tree::root().join("tests/.tools/axe.min.js"));
    read(&path)
}

fn read(path: &Path) -> String {
    fs::read_to_string(path).unwrap_or_else(|error| {
        panic!("{}: {error}; `tests/run tools` installs the accessibility checker", path.display())
    })
}
