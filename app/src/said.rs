//! The words of the page, in the reader's units: one book, read once.

use std::rc::Rc;

use words::Voice;
use yew::prelude::*;

use crate::store::use_work;
use crate::text::voice;

/// The voice in the units chosen on the page.
#[hook]
pub fn use_voice() -> Rc<Voice> {
    voice(use_work().desk.units)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::units::Units;
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
            for part in source.split(".text(\"").skip(1) {
                voice.text(part.split('"').next().unwrap());
                asked += 1;
            }
        }
        assert!(asked > 50, "{asked}");
        assert_eq!(voice.missing(), Vec::<String>::new());
    }
}
