//! Terms from their file, and where they occur in a text.

/// A term.
#[derive(Clone, PartialEq, Eq, Debug)]
pub struct Term {
    /// Its name in addresses, the same in every language.
    pub id: String,
    /// What it is called.
    pub name: String,
    /// The words by which a text speaks of it, each also with a capital.
    words: Vec<String>,
    /// What it means.
    pub means: String,
}

/// All of them.
#[derive(Clone, PartialEq, Eq, Debug, Default)]
pub struct Terms {
    /// In the file's order.
    pub all: Vec<Term>,
}

/// A piece of a text.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub enum Piece<'a> {
    /// Text in which no term is marked.
    Plain(&'a str),
    /// Words that speak of a term, by its place.
    Of(&'a str, usize),
}

impl Terms {
    /// Reads the file: one term a line, `id|name|words;words|meaning`. A line that is none is left out.
    pub fn read(text: &str) -> Self {
        let term = |line: &str| {
            let mut fields = line.split('|').map(str::trim);
            let (id, name, words, means) = (fields.next()?, fields.next()?, fields.next()?, fields.next()?);
            let both = |word: &str| [word.to_owned(), words::letters::capital(word)];
            Some(Term {
                id: id.to_owned(),
                name: name.to_owned(),
                words: words.split(';').flat_map(both).collect(),
                means: means.to_owned(),
            })
        };
        Self { all: text.lines().filter_map(term).collect() }
    }

    /// A text in pieces: the first place where each term occurs is a piece of its own.
    pub fn pieces<'a>(&self, text: &'a str) -> Vec<Piece<'a>> {
        let mut pieces = Vec::new();
        let mut used = Vec::new();
        let (mut from, mut at) = (0, 0);
        let mut before = ' ';
        while let Some(letter) = text.get(at..).and_then(|rest| rest.chars().next()) {
            let found = if before.is_alphanumeric() { None } else { self.longest(text, at) };
            match found.filter(|(term, _)| !used.contains(term)) {
                Some((term, length)) => {
                    pieces.extend(text.get(from..at).filter(|plain| !plain.is_empty()).map(Piece::Plain));
                    pieces.extend(text.get(at..at + length).map(|of| Piece::Of(of, term)));
                    used.push(term);
                    at += length;
                    from = at;
                    before = 'x';
                }
                None => {
                    before = letter;
                    at += letter.len_utf8();
                }
            }
        }
        pieces.extend(text.get(from..).filter(|plain| !plain.is_empty()).map(Piece::Plain));
        pieces
    }

    /// The term with the longest words that stand at a place of the text, and their length.
    fn longest(&self, text: &str, at: usize) -> Option<(usize, usize)> {
        let rest = text.get(at..)?;
        let stands = |word: &str| {
            let begins = rest.get(..word.len()).is_some_and(|start| start.eq_ignore_ascii_case(word));
            let after = || rest.get(word.len()..).and_then(|rest| rest.chars().next());
            begins && !after().is_some_and(char::is_alphanumeric)
        };
        let longest = |term: &Term| term.words.iter().filter(|word| stands(word)).map(String::len).max();
        let found = self.all.iter().enumerate().filter_map(|(place, term)| Some((place, longest(term)?)));
        found.max_by_key(|(_, length)| *length)
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use std::collections::BTreeSet;
    use std::path::Path;

    fn file(language: &str) -> (String, Terms) {
        let path = format!("../assets/words/terms-{language}.txt");
        let text = std::fs::read_to_string(Path::new(env!("CARGO_MANIFEST_DIR")).join(path)).unwrap();
        let terms = Terms::read(&text);
        (text, terms)
    }

    #[test]
    fn both_files_explain_the_same_terms_and_none_too_long() {
        let (text, english) = file("en");
        let (spanish_text, spanish) = file("es");
        let ids = |terms: &Terms| terms.all.iter().map(|term| term.id.clone()).collect::<Vec<_>>();
        assert_eq!(ids(&english), ids(&spanish));
        assert_eq!(
            (english.all.len(), spanish.all.len()),
            (text.lines().count(), spanish_text.lines().count())
        );
        assert!(english.all.len() >= 60);
        for terms in [&english, &spanish] {
            let mut words = BTreeSet::new();
            for term in &terms.all {
                assert!(term.means.ends_with('.') && term.means.chars().count() <= 240, "{}", term.id);
                assert!(!term.name.is_empty() && !term.words.is_empty(), "{}", term.id);
                let lower: BTreeSet<_> = term.words.iter().map(|word| word.to_lowercase()).collect();
                assert!(
                    lower.iter().all(|word| !word.is_empty() && words.insert(word.clone())),
                    "{}",
                    term.id
                );
            }
        }
    }

    #[test]
    fn the_longest_words_win_and_only_whole_words_count() {
        let (_, terms) = file("en");
        let marked = |text| {
            let of = |piece: &Piece| match piece {
                Piece::Of(said, term) => Some(((*said).to_owned(), terms.all[*term].id.clone())),
                Piece::Plain(_) => None,
            };
            terms.pieces(text).iter().filter_map(of).collect::<Vec<_>>()
        };
        let found = marked("Upper element open, drawing, the relief valve and a relief valve; elementary");
        let expected = [("Upper element", "element"), ("relief valve", "relief-valve")];
        assert_eq!(found, expected.map(|(said, id)| (said.to_owned(), id.to_owned())));
    }

    #[test]
    fn the_pieces_make_up_the_text() {
        for language in ["en", "es"] {
            let (_, terms) = file(language);
            for term in &terms.all {
                let whole: String = terms
                    .pieces(&term.means)
                    .iter()
                    .map(|piece| match piece {
                        Piece::Plain(said) | Piece::Of(said, _) => *said,
                    })
                    .collect();
                assert_eq!(whole, term.means);
            }
        }
    }
}
