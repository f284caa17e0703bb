//! The words of the page, in the reader's language and units.

use std::rc::Rc;

use words::{Language, Voice};
use yew::prelude::*;

use crate::store::{Rest, use_steady};
use crate::text::voice;
use crate::units::Units;

/// How the page speaks.
#[derive(Clone, Copy, PartialEq, Eq, Debug, Default)]
pub struct Speech {
    /// The language on the screen.
    pub language: Language,
    /// The units on the screen.
    pub units: Units,
    /// Whether the rest of the book has come.
    pub rest: Rest,
}

/// How the page speaks now.
#[hook]
pub fn use_speech() -> Speech {
    use_steady().speech
}

/// The language chosen on the page. Whoever shows a text calls this, so that it is said again in another one.
#[hook]
pub fn use_language() -> Language {
    use_speech().language
}

/// The units chosen on the page.
#[hook]
pub fn use_units() -> Units {
    use_speech().units
}

/// The voice in the units chosen on the page.
#[hook]
pub fn use_voice() -> Rc<Voice> {
    voice(use_units())
}

#[cfg(test)]
mod tests {
    use super::*;
    use std::path::Path;

    fn sources(folder: &Path, into: &mut Vec<String>) {
        for entry in std::fs::read_dir(folder).unwrap().flatten() {
            let path = entry.path();
            if path.is_dir() {
                sources(&path, into);
            } else if path.extension().is_some_and(|end| end == "rs") {
                into.push(std::fs::read_to_string(path).unwrap());
            }
        }
    }

    /// Every fixed text that a screen asks for is in the book.
    #[test]
    fn every_text_asked_for_is_in_the_book() {
        let mut all = Vec::new();
        sources(&Path::new(env!("CARGO_MANIFEST_DIR")).join("src"), &mut all);
        let voice = voice(Units::Us);
        let mut asked = 0;
        for source in &all {
            for opening in ["text(\"", "Label(\"", "filled(\""] {
                for part in source.split(opening).skip(1) {
                    let id = part.split('"').next().unwrap();
                    if !id.starts_with(char::is_alphabetic) || id.contains('{') {
                        continue;
                    }
                    assert!(voice.has(id), "{id}");
                    asked += 1;
                }
            }
        }
        assert!(asked > 200, "{asked}");
    }

    /// A component that shows a text of its own is drawn again when the language changes.
    #[test]
    fn every_component_with_a_text_follows_the_language() {
        let mut all = Vec::new();
        sources(&Path::new(env!("CARGO_MANIFEST_DIR")).join("src"), &mut all);
        let mut seen = 0;
        for source in all.iter().filter_map(|source| source.split("#[cfg(test)]").next()) {
            for body in source.split("#[component]").skip(1).filter(|body| body.contains("text::")) {
                let follows = [
                    "use_work()",
                    "use_voice()",
                    "use_language()",
                    "use_units()",
                    "use_speech()",
                    "use_steady()",
                ];
                assert!(follows.iter().any(|hook| body.contains(hook)), "{body}");
                seen += 1;
            }
        }
        assert!(seen > 30, "{seen}");
    }
}
