//! Languages there is a book for.

/// A language.
#[derive(Clone, Copy, PartialEq, Eq, Debug, Default)]
pub enum Language {
    /// English as the United States write it. Its book is compiled in.
    #[default]
    English,
    /// Spanish as Latin America and the United States write it: numbers have a decimal point there too.
    Spanish,
}

impl Language {
    /// All of them, in the order they are offered.
    pub const ALL: [Self; 2] = [Self::English, Self::Spanish];

    /// The language's tag (BCP 47).
    pub const fn tag(self) -> &'static str {
        match self {
            Self::English => "en-US",
            Self::Spanish => "es-US",
        }
    }

    /// The tag without its country, which is also the name of its book's file.
    pub const fn short(self) -> &'static str {
        match self {
            Self::English => "en",
            Self::Spanish => "es",
        }
    }

    /// The language's own name for itself, the same in every book.
    pub const fn own_name(self) -> &'static str {
        match self {
            Self::English => "English",
            Self::Spanish => "Español",
        }
    }

    /// The language of a tag, whatever its country.
    pub fn of_tag(tag: &str) -> Option<Self> {
        let short = tag.split('-').next().unwrap_or_default();
        Self::ALL.into_iter().find(|language| language.short().eq_ignore_ascii_case(short))
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_country_does_not_matter() {
        assert_eq!(Language::of_tag("es-MX"), Some(Language::Spanish));
        assert_eq!(Language::of_tag("EN"), Some(Language::English));
        assert_eq!(Language::of_tag("de"), None);
    }
}
