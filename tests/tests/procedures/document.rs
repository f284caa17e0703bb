//! The page of the docs, written from the data: `TANKWRIGHT_BLESS=1 cargo test -p tankwright-tests --test procedures`.

use std::fmt::Write as _;
use std::fs;
use std::path::PathBuf;

use drill::procedure::{self, Follows, Procedure};

const HEAD: &str = "# Procedures

Each step in its order, why it is there, and what follows where it is left out, done after the step below it, or, in the
lines below a table, done otherwise. What follows is found by folding the whole job both ways, so this page cannot drift
from the simulation. \"Nothing\" means that in this job nothing shows; another heater, or bad luck, may be less kind. The
lists are `scenarios/drill/procedures`; this page is written by
`TANKWRIGHT_BLESS=1 cargo test -p tankwright-tests --test procedures`.

A practice aid. On a live heater the maker's instructions, local code and the limits of a licence come first.
";

/// The page as it has to be.
fn page() -> String {
    let mut page = HEAD.to_owned();
    procedure::all().unwrap().iter().for_each(|procedure| section(&mut page, procedure));
    page
}

fn section(page: &mut String, procedure: &Procedure) {
    let Procedure { title, source, .. } = procedure;
    let _ = writeln!(page, "\n## {title}\n\nOrder: {source}.\n");
    page.push_str("| step | why | left out | after the next |\n|---|---|---|---|\n");
    for (at, step) in procedure.steps.iter().enumerate() {
        let last = at + 1 == procedure.steps.len();
        let late = if last { String::new() } else { told(&step.after_next) };
        let _ =
            writeln!(page, "| {} | {} | {} | {late} |", plain(&step.step), step.why, told(&step.left_out));
    }
    let amiss = procedure.steps.iter().flat_map(|step| step.amiss.iter().map(move |amiss| (step, amiss)));
    for (at, (step, amiss)) in amiss.enumerate() {
        let gap = if at == 0 { "\n" } else { "" };
        let _ = writeln!(page, "{gap}- {} {}: {}", plain(&step.step), amiss.how, told(&amiss.follows));
    }
}

fn told(follows: &[Follows]) -> String {
    if follows.is_empty() {
        return "nothing".to_owned();
    }
    let one = |follow: &Follows| match follow {
        Follows::Score(rule) => {
            format!("costs: {}", plain(serde_json::to_value(rule).unwrap().as_str().unwrap()))
        }
        Follows::Harm(harm) => format!("**harm: {}**", plain(harm)),
        Follows::Refused(step) => format!("cannot: {}", plain(step)),
        Follows::Reading(step) => format!("reads otherwise: {}", plain(step)),
    };
    follows.iter().map(one).collect::<Vec<_>>().join("; ")
}

fn plain(name: &str) -> String {
    name.replace('-', " ")
}

#[test]
fn the_page_is_fresh() {
    let path = PathBuf::from(env!("CARGO_MANIFEST_DIR")).join("../docs/procedures.md");
    let page = page();
    if std::env::var_os("TANKWRIGHT_BLESS").is_some() {
        fs::write(&path, &page).unwrap();
    }
    assert_eq!(
        fs::read_to_string(&path).unwrap_or_default(),
        page,
        "see the head of tests/tests/procedures/document.rs"
    );
}
