//! What is looked for: words, and a kind of source.

use quantity::Kind;

use super::entry::Entry;

/// What is looked for.
#[derive(Clone, PartialEq, Default, Debug)]
pub struct Filter {
    /// Words, all of which have to be there.
    pub words: String,
    /// Only this kind.
    pub kind: Option<Kind>,
}

impl Filter {
    /// Whether anything is asked for at all.
    pub fn narrows(&self) -> bool {
        self.kind.is_some() || !self.words.trim().is_empty()
    }

    /// Whether a constant has the words; its kind aside.
    pub fn has_words(&self, entry: &Entry) -> bool {
        crate::shell::has_words(&entry.text, &self.words)
    }

    /// Whether a constant is shown.
    pub fn shows(&self, entry: &Entry) -> bool {
        self.kind.is_none_or(|kind| kind == entry.kind) && self.has_words(entry)
    }
}

/// The kind of a name; none for any other.
pub fn kind_named(name: &str) -> Option<Kind> {
    Kind::ALL.into_iter().find(|kind| kind.name() == name)
}

#[cfg(test)]
mod tests {
    use super::super::entry;
    use super::*;

    #[test]
    fn every_word_has_to_be_there_and_the_kind_to_fit() {
        let all = entry::all();
        let found = |words: &str, kind| {
            let filter = Filter { words: words.to_owned(), kind };
            all.iter().filter(|entry| filter.shows(entry)).count()
        };
        assert_eq!(found(" ", None), all.len());
        let showers = found("shower", None);
        assert!(showers > 0 && showers < all.len());
        assert!(found("SHOWER flow", None) <= showers && found("shower flow", None) > 0);
        assert_eq!(found("no such words", None), 0);
        let by_kind: usize = Kind::ALL.into_iter().map(|kind| found("shower", Some(kind))).sum();
        assert_eq!(by_kind, showers);
        assert_eq!(kind_named("common-practice"), Some(Kind::CommonPractice));
    }
}
