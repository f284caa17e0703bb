//! A language's sentences.

use std::cell::RefCell;

use fluent_bundle::{FluentArgs, FluentBundle, FluentResource, FluentValue};

use crate::Language;

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

impl<'text> From<&'text Fill> for FluentValue<'text> {
    fn from(fill: &'text Fill) -> Self {
        match fill {
            Fill::Text(text) => text.as_str().into(),
            Fill::Count(count) => count.into(),
        }
    }
}

/// The sentences of one language, and English for what that book lacks.
pub struct Book {
    texts: Vec<Texts>,
    missing: RefCell<Vec<String>>,
}

/// Sentences by their names.
type Texts = FluentBundle<FluentResource>;

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
        Self { texts: vec![texts(Language::English, &[CORE, later])], missing: RefCell::default() }
    }

    /// The book of a language from the text of its file, with English behind it; of English, the rest of the book.
    pub fn of(language: Language, text: &str) -> Self {
        if language == Language::English {
            return Self::whole(text);
        }
        let mut book = Self::english();
        book.texts.insert(0, texts(language, &[text]));
        book
    }

    /// A sentence, its places filled from lists of which a later one comes first. One that is not in the book is said
    /// in English; one in no book comes out as its own name. Both are remembered as missing.
    pub fn say(&self, id: &str, fills: &[&[(&str, Fill)]]) -> String {
        for texts in &self.texts {
            if let Some(pattern) = texts.get_message(id).and_then(|message| message.value()) {
                let fills = fills.iter().flat_map(|all| all.iter());
                let given: FluentArgs = fills.map(|(name, fill)| (*name, fill)).collect();
                let mut slips = Vec::new();
                let said = texts.format_pattern(pattern, Some(&given), &mut slips).into_owned();
                if !slips.is_empty() {
                    self.misses(format!("{id}: {said}"));
                }
                return said;
            }
            self.misses(id.to_owned());
        }
        id.to_owned()
    }

    /// Whether a sentence is there.
    pub fn has(&self, id: &str) -> bool {
        self.texts.iter().any(|texts| texts.has_message(id))
    }

    /// What was asked for and not found, for tests.
    pub fn missing(&self) -> Vec<String> {
        self.missing.borrow().clone()
    }

    fn misses(&self, what: String) {
        let mut missing = self.missing.borrow_mut();
        if !missing.contains(&what) {
            missing.push(what);
        }
    }
}

/// The sentences of files. The build has read them; of one that came mangled to the page, what can be read is said, and
/// the rest in English.
fn texts(language: Language, files: &[&str]) -> Texts {
    let mut texts = Texts::new(language.tag().parse().into_iter().collect());
    // The marks that isolate what is filled in are for books of two directions of writing.
    texts.set_use_isolating(false);
    for file in files {
        let read = FluentResource::try_new((*file).to_owned());
        texts.add_resource_overriding(read.unwrap_or_else(|(what_can_be_read, _)| what_can_be_read));
    }
    texts
}

#[cfg(test)]
mod tests {
    use std::collections::BTreeSet;

    use super::*;

    #[test]
    fn each_part_has_its_share_of_the_book_and_none_stands_in_both() {
        let [core, later] = [CORE, LATER].map(|part| {
            let names = part.lines().filter_map(|line| line.split_once(" ="));
            names.map(|(name, _)| name).filter(|name| !name.starts_with(' ')).collect::<BTreeSet<_>>()
        });
        assert!(core.len() > 300 && later.len() > 300, "{} and {}", core.len(), later.len());
        assert_eq!(core.intersection(&later).next(), None);
    }

    #[test]
    fn a_later_list_comes_first_and_what_is_given_is_not_read_again() {
        let book = Book::of(Language::Spanish, "level-upper = { $a } y { $b }");
        let (first, later) = ([("a", "1".into()), ("b", 2.0.into())], [("a", "{ $b }".into())]);
        assert_eq!(book.say("level-upper", &[&first, &later]), "{ $b } y 2");
        assert_eq!(book.missing().len(), 0);
        assert_eq!(book.say("level-upper", &[&first[..1]]), "1 y {$b}");
        assert_eq!(book.missing().into_iter().collect::<Vec<_>>(), ["level-upper: 1 y {$b}"]);
    }

    #[test]
    fn of_a_mangled_book_what_can_be_read_is_said() {
        let book = Book::of(Language::Spanish, "level-upper = superior\nlevel-lower = { inf");
        assert_eq!(book.say("level-upper", &[]), "superior");
        assert_eq!(book.say("level-lower", &[]), "lower");
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
