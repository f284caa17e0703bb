//! Capitals and small letters of the languages that have a book; the library's tables of all scripts are large.

/// Bytes from a capital of these languages to its small letter.
const STEP: u32 = 32;

/// The text in small letters.
pub fn small(text: &str) -> String {
    text.chars().map(|letter| if is_capital(letter) { shifted(letter, true) } else { letter }).collect()
}

/// The same with a capital at its start.
pub fn capital(text: &str) -> String {
    let mut letters = text.chars();
    let Some(first) = letters.next() else { return String::new() };
    let raised = shifted(first, false);
    let first = if is_capital(raised) { raised } else { first };
    std::iter::once(first).chain(letters).collect()
}

fn is_capital(letter: char) -> bool {
    matches!(letter, 'A'..='Z' | 'À'..='Ö' | 'Ø'..='Þ')
}

fn shifted(letter: char, down: bool) -> char {
    let code = u32::from(letter);
    let moved = if down { code.checked_add(STEP) } else { code.checked_sub(STEP) };
    moved.and_then(char::from_u32).unwrap_or(letter)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn letters_of_both_books_as_the_library_has_them() {
        for text in ["Él ÑANDÚ 120 V ×÷", "árbol", "ñu", "Upper Element", "9 Ω", "ßen", "÷", ""] {
            assert_eq!(small(text), text.to_lowercase().replace('ω', "Ω"));
        }
        assert_eq!(
            ["árbol", "ñu", "upper", "9 x", "×", "÷ y", ""].map(capital),
            ["Árbol", "Ñu", "Upper", "9 x", "×", "÷ y", ""]
        );
        for book in
            [include_str!("../../../assets/words/en.ftl"), include_str!("../../../assets/words/es.ftl")]
        {
            let latin: String = book.chars().filter(|letter| *letter < 'Ā').collect();
            assert_eq!(small(&latin), latin.to_lowercase());
        }
    }
}
