//! Cuts the English book in two: what a drill needs is compiled into the page, the rest is fetched beside it.

#![allow(clippy::panic, reason = "a build that cannot cut the book has to end, saying why")]

use std::path::Path;
use std::{env, fs};

/// Beginnings of the names of messages that no drill needs before its first act.
const LATER: [&str; 14] = [
    "atlas-",
    "belief-",
    "curve-",
    "debrief-",
    "glossary-",
    "guide-",
    "instructor-",
    "path-",
    "remedy-",
    "rule-",
    "show-",
    "sources-",
    "trace-",
    "window-",
];

fn main() {
    let book = Path::new("../../assets/words/en.ftl");
    println!("cargo:rerun-if-changed={}", book.display());
    println!("cargo:rerun-if-changed=build.rs");
    let Ok(text) = fs::read_to_string(book) else { panic!("{} cannot be read", book.display()) };
    let (mut core, mut later) = (String::new(), String::new());
    let mut into = &mut core;
    for line in text.lines() {
        // Comments and blank lines are for those who write the book.
        if line.trim().is_empty() || line.starts_with('#') {
            continue;
        }
        if line.starts_with(char::is_alphabetic) {
            into = if LATER.iter().any(|name| line.starts_with(name)) { &mut later } else { &mut core };
        }
        into.push_str(line);
        into.push('\n');
    }
    let Ok(out) = env::var("OUT_DIR") else { panic!("OUT_DIR is not set") };
    for (name, text) in [("core.ftl", core), ("later.ftl", later)] {
        if let Err(why) = fs::write(Path::new(&out).join(name), text) {
            panic!("{name}: {why}");
        }
    }
}
