//! The sentences of each language, as the page has them.

use std::rc::Rc;

use tankwright_tests::tree;
use words::{Book, Language, Units, Voice};

/// Everything said in a language.
pub fn voice(language: Language) -> Voice {
    let book = match language {
        Language::English => Book::english(),
        other => {
            let file = format!("assets/words/{}.ftl", other.short());
            Book::of(other, &std::fs::read_to_string(tree::root().join(file)).expect("the book"))
        }
    };
    Voice::new(Rc::new(book), Units::Customary)
}
