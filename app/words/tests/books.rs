//! The books of words against each other and against the code: nothing missing, nothing unused, nothing too long
//! for its room, the same places to fill in both.

#![allow(clippy::unwrap_used, clippy::panic, clippy::string_slice, reason = "tests")]

use std::collections::{BTreeMap, BTreeSet};
use std::fs;
use std::path::{Path, PathBuf};

use words::{Book, Fill, LATER, Language, SPANISH};

/// Messages by their names, each with its text.
type Messages = BTreeMap<String, String>;

fn root() -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).join("../..")
}

fn text_of(language: &str) -> String {
    fs::read_to_string(root().join(format!("assets/words/{language}.ftl"))).unwrap()
}

fn messages(language: &str) -> Messages {
    let mut all = Messages::new();
    let mut last = String::new();
    for line in text_of(language).lines() {
        match line.split_once(" =") {
            Some((id, text)) if line.starts_with(char::is_alphabetic) => {
                assert!(
                    all.insert(id.to_owned(), text.trim().to_owned()).is_none(),
                    "{language}: {id} stands twice"
                );
                last = id.to_owned();
            }
            _ if line.starts_with([' ', '}']) => {
                let text = all.get_mut(&last).unwrap();
                text.push('\n');
                text.push_str(line);
            }
            _ => {}
        }
    }
    all
}

/// The names of the places to fill.
fn places(text: &str) -> BTreeSet<&str> {
    let end = |c: char| !(c.is_alphanumeric() || c == '-');
    text.split('$')
        .skip(1)
        .filter(|rest| rest.starts_with(char::is_alphabetic))
        .map(|rest| rest.split(end).next().unwrap_or_default())
        .collect()
}

#[test]
fn both_books_parse_without_a_slip() {
    for language in ["en", "es"] {
        if let Err((_, errors)) = fluent_bundle::FluentResource::try_new(text_of(language)) {
            panic!("{language}: {errors:?}");
        }
    }
}

#[test]
fn every_sentence_is_filled_whatever_is_given() {
    let counts = [0.0, 1.0, 2.0, 10.0, 21.0, 1.5, 1e6].map(Fill::Count);
    let given = counts.into_iter().chain([Fill::Text("x".into()), Fill::Text("1 gal".into())]);
    let given: Vec<Fill> = given.collect();
    let mut choices = 0;
    for language in Language::ALL {
        let book = Book::of(language, if language == Language::English { LATER } else { SPANISH });
        for (id, text) in messages(language.short()) {
            let places: Vec<&str> = places(&text).into_iter().collect();
            for turn in 0..given.len() {
                let fill = |of: usize| given[(turn + of) % given.len()].clone();
                let fills: Vec<_> = places.iter().enumerate().map(|(of, name)| (*name, fill(of))).collect();
                let said = book.say(&id, &[&fills]);
                assert!(!said.is_empty() && !said.contains(['{', '\u{2068}']), "{language:?} {id}: {said}");
            }
            choices += usize::from(text.contains("->"));
        }
        assert!(book.missing().is_empty(), "{:?}", book.missing());
    }
    assert!(choices > 40, "{choices} sentences choose");
}

#[test]
fn counts_choose_the_plural() {
    for (language, file, one, many) in [
        (Language::English, LATER, "1 step ticked", "21 steps ticked"),
        (Language::Spanish, SPANISH, "1 paso marcado", "21 pasos marcados"),
    ] {
        let book = Book::of(language, file);
        let said = |count: f64| book.say("kit-evidence-count", &[&[("count", count.into())]]);
        assert!(!said(0.0).contains('0'), "none has words of its own");
        assert!(said(1.0).starts_with(one) && said(21.0).starts_with(many), "{}, {}", said(1.0), said(21.0));
    }
}

#[test]
fn both_books_have_the_same_messages_with_the_same_places_to_fill() {
    let (english, spanish) = (messages("en"), messages("es"));
    let missing: Vec<_> = english.keys().filter(|id| !spanish.contains_key(*id)).collect();
    let left_over: Vec<_> = spanish.keys().filter(|id| !english.contains_key(*id)).collect();
    assert!(missing.is_empty() && left_over.is_empty(), "missing: {missing:?}; left over: {left_over:?}");
    for (id, text) in &english {
        assert_eq!(places(text), places(&spanish[id]), "{id}");
        assert!(!spanish[id].is_empty(), "{id}");
    }
}

/// Groups whose room on the screen is fixed, with the most letters that fit there. What stands on the drawing is
/// measured in the browser too.
const ROOMS: [(&str, usize); 20] = [
    ("tab-", 8),
    ("dial-", 14),
    ("standing-", 9),
    ("display-live", 48),
    ("sheet-box-", 13),
    ("sheet-inside-", 10),
    ("sheet-hot-pipe-", 13),
    ("sheet-cold-valve", 14),
    ("sheet-van-short", 9),
    ("sheet-loop", 11),
    ("sheet-pump-", 13),
    ("sheet-drain-short", 10),
    ("sheet-relief-short", 13),
    ("sheet-insulation-in", 20),
    ("sheet-shield-in", 20),
    ("sheet-screws-bare", 20),
    ("mark-", 22),
    ("tap-short-", 9),
    ("kit-live-volts", 7),
    ("debrief-phase-", 10),
];

#[test]
fn no_message_is_too_long_for_its_room() {
    let (english, spanish) = (messages("en"), messages("es"));
    let length = |text: &str| text.chars().count();
    for (id, text) in &spanish {
        // A short label may need a word more, a sentence stays within six letters for each four of the English one.
        let most = length(&english[id]) * 8 / 5 + 8;
        assert!(length(text) <= most, "{id}: {} letters, at most {most}: {text}", length(text));
    }
    for (group, most) in ROOMS {
        for book in [&english, &spanish] {
            let within: Vec<_> = book.iter().filter(|(id, _)| id.starts_with(group)).collect();
            assert!(!within.is_empty(), "{group} is no group any more");
            for (id, text) in within {
                assert!(length(text) <= most, "{id}: {} letters, at most {most}: {text}", length(text));
            }
        }
    }
}

#[test]
fn spanish_questions_and_cries_are_opened_as_well_as_closed() {
    for (id, text) in messages("es") {
        for (open, close) in [('¿', '?'), ('¡', '!'), ('«', '»'), ('(', ')')] {
            let count = |sign| text.chars().filter(|c| *c == sign).count();
            assert_eq!(count(open), count(close), "{id}: {text}");
        }
    }
}

/// Messages that a heater fed by hot and neutral never hears, or that speak of something else than its two wires:
/// beginnings of names, each with the reason.
const OF_TWO_LEGS: [(&str, &str); 14] = [
    ("act-move-breaker", "its breaker has one pole"),
    ("act-portable-", "the receptacles of a house are on two legs"),
    ("belief-leg-to-ground-is-a-fault", "shown by a reading that only a leg of 120 V gives"),
    ("belief-two-legs-are-240", "only of faults that take two legs"),
    ("caution-act-portable", "the receptacles of a house are on two legs"),
    ("do-move-breaker", "its breaker has one pole"),
    ("guide-", "the first two calls are at heaters of 240 V"),
    ("point-J", "off-peak heaters are fed by two legs"),
    ("point-H", "off-peak heaters are fed by two legs"),
    ("point-M", "the bus of the panel"),
    ("point-X", "the screws of the second leg are not there"),
    ("sight-", "a two-pole breaker, or the receptacles of a house"),
    ("stab-", "a leg where a sentence asks for one"),
    ("wire-", "the wires of the second leg are not there"),
];

/// Where a neutral comes there is no second leg to speak of.
#[test]
fn at_a_heater_fed_by_hot_and_neutral_nobody_speaks_of_legs() {
    let single = || {
        use plant::{BoxKind, HeaterModel, Home, Setting};
        let boxes = [None, Some(BoxKind::FusedSwitch), Some(BoxKind::Timer)];
        let heaters = [HeaterModel::Small20, HeaterModel::Tall50At277];
        heaters.into_iter().flat_map(move |heater| {
            boxes.map(|in_line| {
                Home::sound(Setting {
                    heater,
                    household: plant::household::HouseholdKind::Couple,
                    climate: plant::climate::Climate::MillValley,
                    day: 100,
                    in_line,
                    location: Default::default(),
                })
            })
        })
    };
    // A fault's name and remedy are heard only where the fault can be.
    let never = |id: &str| {
        let of = |fault: &plant::fault::FaultId| id.ends_with(fault.name());
        let fault = plant::fault::FaultId::ALL.iter().find(|fault| of(fault));
        fault.is_some_and(|fault| !single().any(|home| (fault.fault().fits)(&home)))
    };
    let book = Book::of(Language::English, LATER);
    let mut spoken = 0;
    for (id, text) in messages("en") {
        let names = places(&text);
        let fill = |name: &str| Fill::Text(if name == "feed" { "neutral" } else { "x" }.into());
        let fills: Vec<_> = names.iter().map(|name| (*name, fill(name))).collect();
        let said = book.say(&id, &[&fills]);
        let legs = said.split(|c: char| !c.is_alphabetic()).any(|word| word == "leg" || word == "legs");
        let excused = OF_TWO_LEGS.iter().any(|(begins, _)| id.starts_with(begins)) || never(&id);
        assert!(!legs || excused, "{id}: {said}");
        // The Spanish one has the same places, and so chooses too.
        spoken += usize::from(names.contains("feed"));
    }
    assert!(spoken > 25, "{spoken}");
}

fn sources(folder: &Path, into: &mut String) {
    for entry in fs::read_dir(folder).unwrap().flatten() {
        let path = entry.path();
        if path.is_dir() {
            sources(&path, into);
        } else if path.extension().is_some_and(|end| end == "rs") {
            let source = fs::read_to_string(path).unwrap();
            // Tests may name what nobody else does.
            into.push_str(source.split("#[cfg(test)]").next().unwrap());
        }
    }
}

/// The string literals of the code of page and words, without their quotes.
fn literals() -> BTreeSet<String> {
    let mut code = String::new();
    sources(&root().join("app/src"), &mut code);
    sources(&root().join("app/words/src"), &mut code);
    let lines = code.lines().filter(|line| !line.trim_start().starts_with("//"));
    lines.flat_map(|line| line.split('"').skip(1).step_by(2).map(str::to_owned).collect::<Vec<_>>()).collect()
}

/// Whether a literal with places in braces can come out as this name.
fn makes(pattern: &str, id: &str) -> bool {
    let mut parts = pattern.split(['{', '}']).step_by(2);
    let Some(mut rest) = parts.next().and_then(|first| id.strip_prefix(first)) else { return false };
    let parts: Vec<_> = parts.collect();
    let Some((last, between)) = parts.split_last() else { return rest.is_empty() };
    for part in between {
        let Some(at) = rest.find(part) else { return false };
        rest = &rest[at + part.len()..];
    }
    rest.ends_with(last)
}

#[test]
fn no_message_is_unused() {
    let literals = literals();
    let patterns: Vec<&String> = literals
        .iter()
        .filter(|one| {
            // A bare area with a hole behind it would let everything of the area pass.
            let fixed = one.split('{').next().unwrap_or_default();
            one.contains('{') && !one.contains(' ') && fixed.ends_with('-') && !AREAS.contains(&fixed)
        })
        .collect();
    let mut all = messages("en");
    all.insert("debrief-nobody-says-this".to_owned(), String::new());
    let unused: Vec<String> = all
        .into_keys()
        .filter(|id| !literals.contains(id) && !patterns.iter().any(|pattern| makes(pattern, id)))
        .filter(|id| {
            // A family named by `named!`: its prefix stands alone in the code.
            !id.match_indices('-').any(|(at, _)| literals.contains(&id[..at]) && NAMED.contains(&&id[..at]))
        })
        .collect();
    // The made-up one is found, and nothing else.
    assert_eq!(unused, ["debrief-nobody-says-this"]);
}

/// Areas of the page: their messages are named in full wherever they are used.
const AREAS: [&str; 12] = [
    "page-",
    "debrief-",
    "instructor-",
    "sources-",
    "job-",
    "kit-",
    "do-",
    "sheet-",
    "shell-",
    "says-",
    "sight-",
    "shown-",
];

/// Families of names whose prefix alone stands in the code.
const NAMED: [&str; 29] = [
    "place",
    "household",
    "location",
    "climate",
    "fault",
    "remedy",
    "part",
    "advice",
    "observation",
    "hearsay",
    "helper",
    "licence",
    "mode",
    "trap",
    "circuit",
    "handle",
    "level",
    "mount",
    "tap",
    "cover",
    "fitting",
    "writing",
    "meter",
    "source",
    "wire",
    "question",
    "symptom",
    "wish-level",
    "family",
];
