//! A language's sentences.

use std::cell::RefCell;
use std::collections::{BTreeMap, BTreeSet};

use crate::{Language, pattern};

/// What a drill needs of the English book.
const CORE: &str = include_str!(concat!(env!("OUT_DIR"), "/core.ftl"));
/// The rest of it. The page fetches it from beside itself.
#[cfg(not(target_family = "wasm"))]
pub const LATER: &str = include_str!(concat!(env!("OUT_DIR"), "/later.ftl"));
/// The Spanish book. The page fetches it when somebody chooses it.
#[cfg(not(target_family = "wasm"))]
pub const SPANISH: &str = include_str!(concat!(env!("OUT_DIR"), "/es.ftl"));

/// What fills a place in a sentence.
#[derive(Clone, PartialEq, Debug)]
pub enum Fill {
    /// Text, put in as it is.
    Text(String),
    /// A count, which may choose a plural.
    Count(f64),
}

impl From<String> for Fill {
    fn from(text: String) -> Self {
        Self::Text(text)
    }
}
impl From<&str> for Fill {
    fn from(text: &str) -> Self {
        Self::Text(text.to_owned())
    }
}
impl From<f64> for Fill {
    fn from(count: f64) -> Self {
        Self::Count(count)
    }
}
impl From<u32> for Fill {
    fn from(count: u32) -> Self {
        Self::Count(f64::from(count))
    }
}
impl From<u16> for Fill {
    fn from(count: u16) -> Self {
        Self::Count(f64::from(count))
    }
}

/// The sentences of one language, and English for what that book lacks.
pub struct Book {
    texts: Vec<Texts>,
    missing: RefCell<BTreeSet<String>>,
}

/// Sentences by their names, with their places not yet filled.
type Texts = BTreeMap<String, String>;

impl Book {
    /// The English one; in a page, only what a drill needs of it.
    pub fn english() -> Self {
        #[cfg(not(target_family = "wasm"))]
        return Self::whole(LATER);
        #[cfg(target_family = "wasm")]
        return Self::whole("");
    }

    /// The English one with the rest of it.
    pub fn whole(later: &str) -> Self {
        let mut texts = Texts::new();
        read(CORE, &mut texts);
        read(later, &mut texts);
        Self { texts: vec![texts], missing: RefCell::default() }
    }

    /// The book of a language from the text of its file, with English behind it; of English, the rest of the book.
    pub fn of(language: Language, text: &str) -> Self {
        if language == Language::English {
            return Self::whole(text);
        }
        let mut texts = Texts::new();
        read(text, &mut texts);
        let mut book = Self::english();
        book.texts.insert(0, texts);
        book
    }

    /// A sentence, its places filled from lists of which a later one comes first. One that is not in the book is said in English; one in no book comes out as its own name.
    /// Both are remembered as missing.
    pub fn say(&self, id: &str, fills: &[&[(&str, Fill)]]) -> String {
        let mut said = String::new();
        for texts in &self.texts {
            if let Some(text) = texts.get(id) {
                if !pattern::fill(text, fills, &mut said) {
                    self.missing.borrow_mut().insert(format!("{id}: {said}"));
                }
                return said;
            }
            self.missing.borrow_mut().insert(id.to_owned());
        }
        id.to_owned()
    }

    /// Whether a sentence is there.
    pub fn has(&self, id: &str) -> bool {
        self.texts.iter().any(|texts| texts.contains_key(id))
    }

    /// What was asked for and not found, for tests.
    pub fn missing(&self) -> BTreeSet<String> {
        self.missing.borrow().clone()
    }
}

/// Adds the sentences of a file: a name, a sign of equality and text, which goes on in lines that begin with a blank
/// or a brace.
fn read(file: &str, into: &mut Texts) {
    let (mut name, mut text) = ("", String::new());
    for line in file.lines() {
        if line.starts_with([' ', '}']) {
            text.push('\n');
            text.push_str(line);
        } else if let Some((next, begins)) = line.split_once('=')
            && !line.starts_with('#')
        {
            keep(name, &mut text, into);
            name = next.trim();
            text.push_str(begins);
        }
    }
    keep(name, &mut text, into);
}

fn keep(name: &str, text: &mut String, into: &mut Texts) {
    if !name.is_empty() {
        into.insert(name.to_owned(), text.trim().to_owned());
    }
    text.clear();
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn each_part_has_its_share_of_the_book_and_none_stands_in_both() {
        let [core, later] = [CORE, LATER].map(|part| {
            let mut texts = Texts::new();
            read(part, &mut texts);
            texts
        });
        assert!(core.len() > 300 && later.len() > 300, "{} and {}", core.len(), later.len());
        assert_eq!(core.keys().find(|id| later.contains_key(*id)), None);
    }

    #[test]
    fn remarks_and_blank_lines_are_no_part_of_a_sentence() {
        let mut texts = Texts::new();
        read("# a = b\n\none = 1\n# c\n\ntwo =\n    { $x ->\n       *[other] 2\n    }\n", &mut texts);
        assert_eq!(texts.into_values().collect::<Vec<_>>(), ["1", "{ $x ->\n       *[other] 2\n    }"]);
    }

    #[test]
    fn a_missing_sentence_is_its_name() {
        let book = Book::english();
        assert_eq!(book.say("no-such-thing", &[]), "no-such-thing");
        assert_eq!(book.missing().len(), 1);
    }

    #[test]
    fn what_a_book_lacks_is_said_in_english() {
        let book = Book::of(Language::Spanish, "level-upper = superior");
        assert_eq!(book.say("level-upper", &[]), "superior");
        assert_eq!(book.say("level-lower", &[]), "lower");
        assert_eq!(book.missing().into_iter().collect::<Vec<_>>(), ["level-lower"]);
    }
}
