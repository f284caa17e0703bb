//! The atlas as a page of the docs: `TANKWRIGHT_BLESS=1 cargo test -p tankwright-tests --test pairs atlas`.

use std::collections::BTreeMap;
use std::fmt::Write as _;
use std::fs;

use bench::{Action, Shown};
use diagnosis::atlas::{Atlas, Page, Row};
use diagnosis::course::Sign;
use drill::Drill;
use plant::HeaterModel;
use plant::fault::FaultId;
use tankwright_tests::tree;
use words::{Units, Voice};

use crate::stages::signs;
use crate::{asked, drawn};

/// The drawing that the page shows.
const SEED: u32 = 5000;
/// Differences shown of each fault.
const ROWS: usize = 8;
/// Acts shown that tell the stages.
const SIGNS: usize = 3;

const HEAD: &str = "# Fault atlas

Each fault in one house of the simulation, beside the same house sound: what differs, the most telling first; how it reads
early, well on and far gone, where a fault has such stages; which faults look most like it, and the act that tells them
apart. Every line was walked in the simulated house; the figures belong to this drawing, another house reads otherwise.
Whether any two can be told apart at all is in `pairs.csv`. Written by `TANKWRIGHT_BLESS=1 cargo test -p tankwright-tests --test pairs atlas`.

A practice aid. On a live heater the maker's instructions, local code and the limits of a licence come first.
";

/// Stands in place of differences where nothing at the heater differs.
const ALIKE: &str = "Nothing at the heater differs from a sound one; the people ask more of it than it can make. These readings come out \
as in the sound house, and each rules out the most:\n\n| act | before it | sound | with this fault | tells it from |\n\
|---|---|---|---|---|\n";

/// The readings of a fault that leaves no trace which tell it from the most others: those that show a sound heater.
fn alike(atlas: &Atlas, id: FaultId) -> Vec<Row> {
    let (_, here) = atlas.walks().iter().find(|(one, _)| one.fault == id).unwrap();
    let mut rows = BTreeMap::new();
    for (_, there) in atlas.walks().iter().filter(|(one, _)| one.fault != id) {
        for t in here.told_from(there) {
            let row = || Row {
                round: t.round,
                act: t.act.clone(),
                after: t.after.cloned(),
                sound: atlas.sound().shown(t.round, t.step).unwrap().clone(),
                faulty: t.here.clone(),
                tells: 0,
            };
            rows.entry((t.round, t.step)).or_insert_with(row).tells += 1;
        }
    }
    let mut rows: Vec<Row> = rows.into_values().collect();
    rows.sort_by_key(|row| std::cmp::Reverse(row.tells));
    let mut once = Vec::new();
    rows.retain(|row| !once.contains(&row.act) && (once.push(row.act.clone()), true).1);
    rows.truncate(ROWS);
    rows
}

fn cell(text: &str) -> String {
    text.replace('|', "\\|").replace('\n', " ")
}

fn shown(voice: &Voice, shown: &Shown) -> String {
    cell(&voice.shown(shown))
}

fn act(voice: &Voice, act: &Action) -> String {
    cell(&voice.action(act))
}

fn section(
    text: &mut String,
    voice: &Voice,
    id: FaultId,
    heater: HeaterModel,
    (atlas, page): (&Atlas, &Page),
    signs: &[Sign],
) {
    let _ = writeln!(text, "\n## {id} {}\n\nHeater: {}.\n", voice.fault(id), voice.heater(heater));
    let differs = page.rows.iter().any(|row| shown(voice, &row.sound) != shown(voice, &row.faulty));
    if differs {
        text.push_str(
            "| act | before it | sound | with this fault | tells it from |\n|---|---|---|---|---|\n",
        );
    }
    let mut seen = Vec::new();
    for row in &page.rows {
        let (sound, faulty) = (shown(voice, &row.sound), shown(voice, &row.faulty));
        // An eye may see more than the sentence says; one act is told once.
        if sound == faulty || seen.contains(&&row.act) || seen.len() == ROWS {
            continue;
        }
        seen.push(&row.act);
        let after = row.after.as_ref().map_or("as found".to_owned(), |a| beginning_small(&act(voice, a)));
        let _ = writeln!(text, "| {} | {after} | {sound} | {faulty} | {} |", act(voice, &row.act), row.tells);
    }
    if !differs {
        text.push_str(ALIKE);
        for row in alike(atlas, id) {
            let (sound, faulty) = (shown(voice, &row.sound), shown(voice, &row.faulty));
            let after = row.after.as_ref().map_or("as found".to_owned(), |a| beginning_small(&act(voice, a)));
            let _ =
                writeln!(text, "| {} | {after} | {sound} | {faulty} | {} |", act(voice, &row.act), row.tells);
        }
    }
    course(text, voice, signs);
    text.push_str("\n| looks like | told apart by | here | there |\n|---|---|---|---|\n");
    for twin in &page.twins {
        let name = format!("{} {}", twin.fault, voice.fault(twin.fault));
        let _ = match &twin.by {
            Some((a, here, there)) => {
                assert_ne!(shown(voice, here), shown(voice, there), "{id} and {}: {a:?}", twin.fault);
                writeln!(
                    text,
                    "| {name} | {} | {} | {} |",
                    act(voice, a),
                    shown(voice, here),
                    shown(voice, there)
                )
            }
            None => writeln!(text, "| {name} | nothing: one repair | | |"),
        };
    }
}

/// Sound, and each stage of the fault.
fn course(text: &mut String, voice: &Voice, signs: &[Sign]) {
    let Some(first) = signs.first() else { return };
    let stages: Vec<String> =
        first.shown.iter().map(|(stage, _)| beginning_small(&voice.stage(*stage))).collect();
    let _ = writeln!(text, "\nAs it gets worse:\n\n| act | before it | sound | {} |", stages.join(" | "));
    let _ = writeln!(text, "|---|---|---|{}", "---|".repeat(stages.len()));
    for sign in signs.iter().take(SIGNS) {
        let after = sign.after.as_ref().map_or("as found".to_owned(), |a| beginning_small(&act(voice, a)));
        let shown: Vec<String> = sign.shown.iter().map(|(_, one)| shown(voice, one)).collect();
        let sound = self::shown(voice, &sign.sound);
        let _ = writeln!(text, "| {} | {after} | {sound} | {} |", act(voice, &sign.act), shown.join(" | "));
    }
}

fn beginning_small(text: &str) -> String {
    let mut letters = text.chars();
    letters.next().map(|first| first.to_lowercase().chain(letters).collect()).unwrap_or_default()
}

#[test]
fn the_page_is_fresh() {
    let voice = Voice::english(Units::Customary);
    let mut atlases: Vec<(HeaterModel, FaultId, Drill, Atlas)> = Vec::new();
    let mut text = HEAD.to_owned();
    for id in FaultId::ALL {
        // The plain heater with nothing in its line where that serves, else the first house that it fits.
        let plain = (HeaterModel::Plain40, FaultId::F04);
        let others = HeaterModel::ALL.iter().map(|heater| (*heater, *id));
        let found = std::iter::once(plain).chain([(HeaterModel::Plain40, *id)]).chain(others).find_map(
            |(heater, base)| {
                if !atlases.iter().any(|(h, b, ..)| (*h, *b) == (heater, base)) {
                    let drill = drill::make(&asked(heater, base, SEED)).ok()?;
                    let atlas = drawn(&drill, SEED);
                    atlases.push((heater, base, drill, atlas));
                }
                let (_, _, drill, atlas) = atlases.iter().find(|(h, b, ..)| (*h, *b) == (heater, base))?;
                Some((drill.clone(), atlas.clone(), atlas.page(*id)?))
            },
        );
        // What wants a winter, a town or a board has a house of its own.
        let own = || {
            let drill = drill::showcase(*id)?;
            let atlas = drawn(&drill, SEED);
            let page = atlas.page(*id)?;
            Some((drill, atlas, page))
        };
        let (drill, atlas, page) = found.or_else(own).unwrap_or_else(|| panic!("{id} fits no heater"));
        // People who ask too much of a sound heater leave no trace on it.
        let people = *id == FaultId::F04;
        assert!(people || !page.rows.is_empty(), "{id} differs from a sound house in nothing");
        voice.about(words::heater_of(&drill.job.home.plant));
        let signs = signs(&drill, &atlas, *id, SEED);
        section(&mut text, &voice, *id, drill.setting.heater, (&atlas, &page), &signs);
    }
    let path = tree::root().join("docs/atlas/README.md");
    if std::env::var_os("TANKWRIGHT_BLESS").is_some() {
        fs::create_dir_all(tree::root().join("docs/atlas")).unwrap();
        fs::write(&path, &text).unwrap();
    }
    assert!(
        fs::read_to_string(&path).unwrap_or_default() == text,
        "the atlas is stale: see the head of tests/tests/pairs/atlas.rs"
    );
    assert_eq!(voice.missing(), Vec::<String>::new());
}
