//! Reads the books, refuses slips, and writes them as the page reads them, without remarks. The English one is cut in two: what a drill needs is compiled into the page, the rest is fetched beside it.

#![allow(clippy::panic, reason = "a build that cannot read a book has to end, saying why")]

use std::path::Path;
use std::{env, fs};

use fluent_syntax::ast::{Entry, Message, Resource};
use fluent_syntax::{parser, serializer};

/// Beginnings of the names of messages that no drill needs before its first act.
const LATER: [&str; 42] = [
    "advice-",
    "atlas-",
    "belief-",
    "climate-",
    "curve-",
    "debrief-",
    "family-",
    "fault-",
    "glossary-",
    "guide-",
    "hearsay-",
    "help-",
    "hint-",
    "household-",
    "instructor-",
    "observation-",
    "page-as-text",
    "page-attempt-text",
    "page-chance",
    "page-choose-",
    "page-copied",
    "page-copy",
    "page-exam-",
    "page-expect-",
    "page-fault",
    "page-hand-in",
    "page-opening",
    "page-save-",
    "page-second-",
    "page-selected",
    "path-",
    "pocket-",
    "remedy-",
    "rule-",
    "show-",
    "sources-",
    "trace-",
    "trap-",
    "window-",
    "wish-",
    "wrong-attempt-",
    "wrong-opening-",
];

fn main() {
    println!("cargo:rerun-if-changed=build.rs");
    let (later, core) = book("en").into_iter().partition(|message| {
        let name = message.id.name.as_str();
        LATER.iter().any(|begins| name.starts_with(begins))
    });
    write("core", core);
    write("later", later);
    write("es", book("es"));
}

/// The messages of a book.
fn book(language: &str) -> Vec<Message<String>> {
    let path = format!("../../assets/words/{language}.ftl");
    println!("cargo:rerun-if-changed={path}");
    let text = fs::read_to_string(&path).unwrap_or_else(|why| panic!("{path}: {why}"));
    let read = parser::parse(text).unwrap_or_else(|(_, slips)| panic!("{path}: {slips:?}"));
    read.body.into_iter().filter_map(|entry| message(&path, entry)).collect()
}

/// A message; remarks are for those who write the book.
fn message(path: &str, entry: Entry<String>) -> Option<Message<String>> {
    match entry {
        Entry::Message(message) => {
            let name = &message.id.name;
            assert!(
                message.value.is_some() && message.attributes.is_empty(),
                "{path}: {name} has more than a text"
            );
            Some(Message { comment: None, ..message })
        }
        Entry::Term(term) => {
            panic!("{path}: -{} is a term, which would have to stand in both parts of a book", term.id.name)
        }
        _ => None,
    }
}

fn write(name: &str, messages: Vec<Message<String>>) {
    let body = messages.into_iter().map(Entry::Message).collect();
    let text = serializer::serialize(&Resource { body });
    let Ok(out) = env::var("OUT_DIR") else { panic!("OUT_DIR is not set") };
    fs::write(Path::new(&out).join(format!("{name}.ftl")), text)
        .unwrap_or_else(|why| panic!("{name}: {why}"));
}
