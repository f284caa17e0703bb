//! One constant as the page shows it.

use quantity::{Kind, Listed};
use words::letters::{capital, small};

/// One constant, in words.
#[derive(Clone, PartialEq, Debug)]
pub struct Entry {
    /// The group it stands in: crate and first module, as `plant-thermal`.
    pub group: String,
    /// What it is.
    pub name: String,
    /// Its value with its unit.
    pub value: String,
    /// The same in the units people read; empty where those are the same.
    pub usual: String,
    /// The kind of its source.
    pub kind: Kind,
    /// The document, the inputs or the reason.
    pub from: &'static str,
    /// Where it stands in the source.
    pub at: String,
    /// All of it in small letters, to search.
    pub text: String,
}

impl Entry {
    fn of(listed: Listed) -> Self {
        let Listed { module, ident, constant } = listed;
        let mut steps = module.split("::");
        let (world, first) = (steps.next().unwrap_or_default(), steps.next().unwrap_or_default());
        let name = match steps.last().filter(|_| first == "fault").and_then(fault_number) {
            Some(number) => format!("{number}: {}", constant.name()),
            None => capital(constant.name()),
        };
        let value = [constant.value().as_str(), constant.unit()].join(" ").trim_end().to_owned();
        let usual = constant.usual().unwrap_or_default();
        let (kind, from) = (constant.tag().kind(), constant.tag().words());
        let at = format!("{module}::{ident}");
        let text = small(&[name.as_str(), &value, &usual, kind.name(), from, &at].join(" "));
        Self { group: format!("{world}-{first}"), name, value, usual, kind, from, at, text }
    }
}

/// The number of a fault whose module is named after it.
fn fault_number(module: &str) -> Option<String> {
    let digits = module.strip_prefix('f')?;
    digits.chars().all(|c| c.is_ascii_digit()).then(|| format!("F{digits}"))
}

/// Every constant, in the order of the code.
pub fn all() -> Vec<Entry> {
    [plant::sources(), bench::sources(), solver::sources()].concat().into_iter().map(Entry::of).collect()
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::text::voice;
    use crate::units::Units;

    #[test]
    fn every_group_and_kind_has_its_words() {
        let voice = voice(Units::Us);
        for entry in all() {
            voice.text(&format!("sources-group-{}", entry.group));
            assert!(!entry.name.is_empty() && !entry.value.is_empty(), "{entry:?}");
        }
        for kind in Kind::ALL {
            voice.text(&format!("sources-kind-{}", kind.name()));
            voice.text(&format!("sources-kind-{}-about", kind.name()));
        }
        assert_eq!(voice.missing(), Vec::<String>::new());
    }

    #[test]
    fn a_number_of_a_fault_says_which() {
        assert!(all().iter().any(|entry| entry.name == "F13: ohms" && entry.value == "0.05 to 0.5 ohm"));
    }
}
