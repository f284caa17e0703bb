//! The two tables of a fault: what differs from the sound house, and what looks most like it.

use bench::Action;
use diagnosis::atlas::{Page, Twin};
use diagnosis::course::Sign;
use words::Voice;
use yew::prelude::*;

use crate::route::Route;

/// Differences shown.
const ROWS: usize = 14;
/// Acts shown that tell the stages.
const SIGNS: usize = 3;

/// A table, its columns by their names in the book; each row headed by its first cell. A cell names its column, where a narrow
/// screen stands the row on end.
fn table(voice: &Voice, columns: &[&str], rows: Vec<(Html, Vec<String>)>) -> Html {
    let columns: Vec<AttrValue> = columns.iter().map(|id| voice.text(id).into()).collect();
    let cell =
        |(column, text): (&AttrValue, String)| html! { <td data-column={column.clone()}>{ text }</td> };
    let row = |(head, cells): (Html, Vec<String>)| {
        html! { <tr><th scope="row">{ head }</th>{ for columns.iter().skip(1).zip(cells).map(cell) }</tr> }
    };
    html! {
        <table class="atlas-rows">
            <thead><tr>{ for columns.iter().map(|one| html! { <th scope="col">{ one }</th> }) }</tr></thead>
            <tbody>{ for rows.into_iter().map(row) }</tbody>
        </table>
    }
}

/// How the heater stood.
pub fn before(voice: &Voice, after: Option<&Action>) -> String {
    after.map_or_else(|| voice.text("atlas-as-found"), |act| voice.action(act))
}

/// Healthy beside faulty.
pub fn differences(voice: &Voice, page: &Page) -> Html {
    let mut told: Vec<&Action> = Vec::new();
    let mut rows = Vec::new();
    for row in &page.rows {
        let (sound, faulty) = (voice.shown(&row.sound), voice.shown(&row.faulty));
        // An eye may see more than the sentence says; one act is told once.
        if sound == faulty || told.contains(&&row.act) || rows.len() == ROWS {
            continue;
        }
        told.push(&row.act);
        rows.push((voice.action(&row.act).into(), vec![before(voice, row.after.as_ref()), sound, faulty]));
    }
    if rows.is_empty() {
        return html! { <p class="note">{ voice.text("atlas-no-difference") }</p> };
    }
    table(voice, &["atlas-act", "atlas-before", "atlas-sound", "atlas-faulty"], rows)
}

/// Sound, and each stage of the fault; nothing where no act tells them.
pub fn course(voice: &Voice, signs: &[Sign]) -> Html {
    let Some(first) = signs.first() else { return Html::default() };
    let stages: Vec<String> = first.shown.iter().map(|(stage, _)| format!("atlas-stage-{stage}")).collect();
    let mut columns = vec!["atlas-act", "atlas-before", "atlas-sound"];
    columns.extend(stages.iter().map(String::as_str));
    let row = |sign: &Sign| {
        let shown = std::iter::once(&sign.sound).chain(sign.shown.iter().map(|(_, shown)| shown));
        let mut cells = vec![before(voice, sign.after.as_ref())];
        cells.extend(shown.map(|one| voice.shown(one)));
        (voice.action(&sign.act).into(), cells)
    };
    html! {
        <>
            <h2>{ voice.text("atlas-course") }</h2>
            { table(voice, &columns, signs.iter().take(SIGNS).map(row).collect()) }
        </>
    }
}

/// The faults most like it.
pub fn twins(voice: &Voice, page: &Page) -> Html {
    let columns = ["atlas-twin", "atlas-by", "atlas-here", "atlas-there"];
    table(voice, &columns, page.twins.iter().map(|one| twin(voice, one)).collect())
}

fn twin(voice: &Voice, one: &Twin) -> (Html, Vec<String>) {
    let href = format!("{}/{}", Route::Atlas.href(), one.fault);
    let cells = match &one.by {
        Some((act, here, there)) => vec![voice.action(act), voice.shown(here), voice.shown(there)],
        None => vec![voice.text("atlas-one-repair"), String::new(), String::new()],
    };
    (html! { <a {href}>{ format!("{} {}", one.fault, voice.fault(one.fault)) }</a> }, cells)
}
