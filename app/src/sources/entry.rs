//! One constant as the page shows it.

use quantity::Kind;
use words::letters::small;

use super::filter::kind_named;

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
    pub from: String,
    /// Where it stands in the source.
    pub at: String,
    /// All of it in small letters, to search.
    pub text: String,
}

impl Entry {
    /// A line of the list; nothing where it is cut.
    fn of(line: &str) -> Option<Self> {
        let mut fields = line.split('\t').map(str::to_owned);
        let (group, name, value) = (fields.next()?, fields.next()?, fields.next()?);
        let (usual, kind) = (fields.next()?, kind_named(&fields.next()?)?);
        let (from, at) = (fields.next()?, fields.next()?);
        let text = small(&[name.as_str(), &value, &usual, kind.name(), &from, &at].join(" "));
        Some(Self { group, name, value, usual, kind, from, at, text })
    }
}

/// Every constant of the list, in the order of the code.
pub fn read(list: &str) -> Vec<Entry> {
    list.lines().filter_map(Entry::of).collect()
}

/// Every constant, as the list has them.
#[cfg(test)]
pub fn all() -> Vec<Entry> {
    read(&words::sources::list())
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
