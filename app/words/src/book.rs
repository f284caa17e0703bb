//! A language's sentences.

use std::cell::RefCell;
use std::collections::BTreeSet;

use fluent_bundle::{FluentArgs, FluentBundle, FluentResource, FluentValue};

use crate::Language;

/// What a drill needs of the English book.
const CORE: &str = include_str!(concat!(env!("OUT_DIR"), "/core.ftl"));
/// The rest of it. The page fetches it from beside itself.
#[cfg(not(target_family = "wasm"))]
pub const LATER: &str = include_str!(concat!(env!("OUT_DIR"), "/later.ftl"));

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
    bundles: Vec<FluentBundle<FluentResource>>,
    missing: RefCell<BTreeSet<String>>,
}

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
        let mut book = bundle(Language::English, CORE);
        book.add_resource_overriding(resource(later));
        Self { bundles: vec![book], missing: RefCell::default() }
    }

    /// The book of a language from the text of its file, with English behind it; of English, the rest of the book.
    pub fn of(language: Language, text: &str) -> Self {
        if language == Language::English {
            return Self::whole(text);
        }
        let mut book = Self::english();
        book.bundles.insert(0, bundle(language, text));
        book
    }

    /// A sentence. One that is not in the book is said in English; one in no book comes out as its own name.
    /// Both are remembered as missing.
    pub fn say(&self, id: &str, fills: &[(&str, Fill)]) -> String {
        let mut args = FluentArgs::new();
        for (name, fill) in fills {
            let value = match fill {
                Fill::Text(text) => FluentValue::from(text.as_str()),
                Fill::Count(count) => FluentValue::from(*count),
            };
            args.set(*name, value);
        }
        for bundle in &self.bundles {
            let Some(pattern) = bundle.get_message(id).and_then(|m| m.value()) else {
                self.missing.borrow_mut().insert(id.to_owned());
                continue;
            };
            let mut errors = Vec::new();
            let said = bundle.format_pattern(pattern, Some(&args), &mut errors);
            if !errors.is_empty() {
                self.missing.borrow_mut().insert(format!("{id}: {errors:?}"));
            }
            return said.into_owned();
        }
        id.to_owned()
    }

    /// Whether a sentence is there.
    pub fn has(&self, id: &str) -> bool {
        self.bundles.iter().any(|bundle| bundle.has_message(id))
    }

    /// What was asked for and not found, for tests.
    pub fn missing(&self) -> BTreeSet<String> {
        self.missing.borrow().clone()
    }
}

fn bundle(language: Language, text: &str) -> FluentBundle<FluentResource> {
    let tag = language.tag().parse().unwrap_or_default();
    let mut bundle = FluentBundle::new(vec![tag]);
    bundle.set_use_isolating(false);
    bundle.add_resource_overriding(resource(text));
    bundle
}

/// A book with a slip in one sentence still has all the others; a test refuses slips.
fn resource(text: &str) -> FluentResource {
    match FluentResource::try_new(text.to_owned()) {
        Ok(resource) | Err((resource, _)) => resource,
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_book_has_no_slip() {
        for part in [CORE, LATER] {
            if let Err((_, errors)) = FluentResource::try_new(part.to_owned()) {
                panic!("{errors:?}");
            }
            assert!(part.len() > 20_000, "{}", part.len());
        }
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
