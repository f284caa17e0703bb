//! A browser that a check drives as a learner would: by mouse, keyboard or touch, by role and name.
//!
//! ```no_run
//! use tankwright_tests::browser::{Browser, Screen};
//!
//! let Some(browser) = Browser::open_page(Screen::DESK) else { return };
//! browser.role("button", "Start").click();
//! browser.wait_for_text("Kitchen");
//! browser.key("Tab");
//! browser.assert_accessible();
//! browser.assert_quiet();
//! browser.picture("kitchen");
//! ```
//!
//! - Every browser has a fresh profile and sees the page as the native program serves it, headers included.
//! - Whatever is looked for is waited for, up to [`PATIENCE`]; what does not come ends the check with a message
//!   that lists what was there instead.
//! - [`Browser::role`] asks the browser's own accessibility tree, so a check that passes by role and name is one
//!   that a screen reader can follow.
//! - [`Hand`] works the page by mouse, by keyboard alone or by touch.
//! - [`Browser::assert_quiet`] fails on any console message and on any request to another origin; call it last.
//! - [`Browser::call_export`] runs a function that the page exports from WebAssembly, to be held against native.
//! - Pictures go to `tests/out/`.
//! - `TANKWRIGHT_NO_BROWSER=1` makes `open_page` return `None`, for quick runs; `tests/run` never sets it.
//! - Without `TANKWRIGHT_DIST` (a folder with the built page) the page is built first.
//!
//! A new group of checks is a file `tests/browser/NAME.rs` and a line in `tests/browser/main.rs`.
// A check ends by panicking, and this is what checks are made of.
#![allow(clippy::unwrap_used, clippy::panic)]

mod access;
mod amiss;
mod conditions;
mod driver;
mod element;
mod exports;
mod find;
mod hand;
mod input;
mod screen;
mod site;
mod spoken;

use std::cell::RefCell;
use std::time::Duration;

pub use driver::DriverError;
pub use element::Element;
pub use hand::Hand;
pub use screen::Screen;
pub use site::folder as page_folder;
pub use spoken::Message;

use driver::Driver;

/// How long anything looked for may take to appear.
pub const PATIENCE: Duration = Duration::from_secs(30);

/// A browser with the page open.
pub struct Browser {
    driver: Driver,
    address: String,
    touch: bool,
    heard: RefCell<Vec<Message>>,
}

impl Browser {
    /// A fresh browser with the page started; `None` when this run leaves browsers out.
    #[track_caller]
    pub fn open_page(screen: Screen) -> Option<Self> {
        Self::open_page_at(screen, "")
    }

    /// As [`Browser::open_page`], at an address below the page's own, such as `#drill=...`.
    #[track_caller]
    pub fn open_page_at(screen: Screen, below: &str) -> Option<Self> {
        let browser = Self::blank(screen)?;
        browser.go(below);
        browser.wait_until_started();
        Some(browser)
    }

    /// A fresh browser that has not gone anywhere yet, to set conditions before the page starts.
    #[track_caller]
    pub fn blank(screen: Screen) -> Option<Self> {
        if std::env::var_os("TANKWRIGHT_NO_BROWSER").is_some() {
            eprintln!("left out: TANKWRIGHT_NO_BROWSER is set");
            return None;
        }
        let address = site::address().to_owned();
        let (driver, heard) = (Driver::start(screen), RefCell::default());
        let browser = Self { driver, address, touch: screen.touch, heard };
        browser.show_on(screen);
        Some(browser)
    }

    /// The page's address.
    pub fn address(&self) -> &str {
        &self.address
    }

    /// Goes to an address below the page's own.
    #[track_caller]
    pub fn go(&self, below: &str) {
        let url = format!("{}{below}", self.address);
        self.driver.post("url", &serde_json::json!({ "url": url })).unwrap();
    }

    /// Goes to the page at another address, which counts as the page's own from then on.
    #[track_caller]
    pub fn go_to(&mut self, address: &str) {
        self.address = address.to_owned();
        self.go("");
    }

    /// Loads the page again, as a learner does in the middle of a drill.
    #[track_caller]
    pub fn reload(&self) {
        self.driver.post("refresh", &serde_json::json!({})).unwrap();
        self.wait_until_started();
    }

    /// The page's title.
    pub fn title(&self) -> String {
        self.driver.get("title").unwrap().as_str().unwrap_or_default().to_owned()
    }

    /// Waits until WebAssembly has replaced the shell's words.
    #[track_caller]
    pub fn wait_until_started(&self) {
        self.wait_until(
            "document.readyState === 'complete' && !document.getElementById('starting') \
             && document.documentElement.dataset.book",
        );
    }
}
