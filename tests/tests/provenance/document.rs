//! `docs/sources/README.md`: every tagged constant, and what still comes from memory.

use std::collections::BTreeMap;
use std::fmt::Write as _;
use std::fs;

use quantity::{Kind, Listed};
use tankwright_tests::tree;

/// Set to write the file anew instead of comparing.
const BLESS: &str = "TANKWRIGHT_BLESS";

const OPENING: &str = "\
# Where the numbers come from

Every tagged constant of the simulated world, module by module, with its source. The page shows the same under
\"Where numbers come from\". Better sources and wrong figures found on the way are in `corrections.md` beside this.

This file is written by `TANKWRIGHT_BLESS=1 cargo test -p tankwright-tests --test provenance`; the test fails when it is
stale. Values are in SI unless the unit says otherwise, to six significant figures.
";

/// What each kind means.
const fn meaning(kind: Kind) -> &'static str {
    match kind {
        Kind::Published => "seen in the document that is named",
        Kind::Computed => "worked out from the inputs that are named",
        Kind::CommonPractice => "usual in the trade; no document says so",
        Kind::Memory => "recalled, to be looked up in the document that is named",
        Kind::Model => "chosen for this simulation, for the reason given",
        Kind::Invented => "made up for practice: people, places, equipment",
    }
}

#[test]
fn the_list_among_the_documents_is_up_to_date() {
    let listed: Vec<Listed> = super::worlds().into_iter().flat_map(|world| world.listed).collect();
    let fresh = written(&listed);
    let path = tree::root().join("docs/sources/README.md");
    if std::env::var_os(BLESS).is_some() {
        fs::create_dir_all(tree::root().join("docs/sources")).expect("the folder can be made");
        fs::write(&path, &fresh).expect("the list can be written");
    }
    let kept = fs::read_to_string(&path).unwrap_or_default();
    let first = kept.lines().zip(fresh.lines()).find(|(kept, fresh)| kept != fresh);
    assert!(
        kept == fresh,
        "docs/sources/README.md is stale ({BLESS}=1 writes it anew); first difference: {first:?}"
    );
}

fn written(listed: &[Listed]) -> String {
    let mut text = OPENING.to_owned();
    counts(&mut text, listed);
    memory(&mut text, listed);
    text.push_str("\n## All of them\n");
    let mut module = "";
    for entry in listed {
        if entry.module != module {
            module = entry.module;
            // Writing into a text cannot fail.
            let _ = writeln!(
                text,
                "\n### `{module}`\n\n| what | value | kind | source | constant |\n|---|---|---|---|---|"
            );
        }
        let constant = entry.constant;
        let (kind, words) = (constant.tag().kind().name(), cell(constant.tag().words()));
        let _ = writeln!(
            text,
            "| {} | {} | {kind} | {words} | `{}` |",
            cell(constant.name()),
            cell(&value(entry)),
            entry.ident
        );
    }
    text
}

fn counts(text: &mut String, listed: &[Listed]) {
    let _ = writeln!(text, "\n## How many\n\n| kind | what it means | constants |\n|---|---|---|");
    for kind in Kind::ALL {
        let count = listed.iter().filter(|entry| entry.constant.tag().kind() == kind).count();
        let _ = writeln!(text, "| {} | {} | {count} |", kind.name(), meaning(kind));
    }
    let _ = writeln!(text, "| all | | {} |", listed.len());
}

/// What is still from memory, by the document to look it up in.
fn memory(text: &mut String, listed: &[Listed]) {
    let mut by_document: BTreeMap<&str, Vec<String>> = BTreeMap::new();
    for entry in listed.iter().filter(|entry| entry.constant.tag().kind() == Kind::Memory) {
        let line = format!("{} ({})", entry.constant.name(), value(entry));
        by_document.entry(entry.constant.tag().words()).or_default().push(line);
    }
    text.push_str("\n## Still from memory\n\n| look up in | numbers |\n|---|---|\n");
    for (document, numbers) in by_document {
        let _ = writeln!(text, "| {} | {} |", cell(document), cell(&numbers.join("; ")));
    }
}

fn value(entry: &Listed) -> String {
    let constant = entry.constant;
    let si = [constant.value().as_str(), constant.unit()].join(" ").trim_end().to_owned();
    constant.usual().map_or_else(|| si.clone(), |usual| format!("{si} ({usual})"))
}

/// A text as a cell of a table.
fn cell(text: &str) -> String {
    text.replace('|', "\\|").replace('\n', " ")
}
