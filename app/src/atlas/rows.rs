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

/// A cell that names its column where a narrow screen stands the row on end.
fn cell(voice: &Voice, column: &str, text: String) -> Html {
    html! { <td data-column={voice.text(column)}>{ text }</td> }
}

fn head(voice: &Voice, columns: &[impl AsRef<str>]) -> Html {
    html! { <thead><tr>{ for columns.iter().map(|id| html! { <th scope="col">{ voice.text(id.as_ref()) }</th> }) }</tr></thead> }
}

/// How the heater stood.
fn before(voice: &Voice, after: Option<&Action>) -> String {
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
        let before = before(voice, row.after.as_ref());
        rows.push(html! {
            <tr>
                <th scope="row">{ voice.action(&row.act) }</th>
                { cell(voice, "atlas-before", before) }
                { cell(voice, "atlas-sound", sound) }
                { cell(voice, "atlas-faulty", faulty) }
            </tr>
        });
    }
    if rows.is_empty() {
        return html! { <p class="note">{ voice.text("atlas-no-difference") }</p> };
    }
    html! {
        <table class="atlas-rows">
            { head(voice, &["atlas-act", "atlas-before", "atlas-sound", "atlas-faulty"]) }
            <tbody>{ for rows }</tbody>
        </table>
    }
}

/// Sound, and each stage of the fault; nothing where no act tells them.
pub fn course(voice: &Voice, signs: &[Sign]) -> Html {
    let Some(first) = signs.first() else { return Html::default() };
    let stages = first.shown.iter().map(|(stage, _)| format!("atlas-stage-{stage}"));
    let columns: Vec<String> =
        ["atlas-act", "atlas-before", "atlas-sound"].map(str::to_owned).into_iter().chain(stages).collect();
    let row = |sign: &Sign| {
        let shown = std::iter::once(&sign.sound).chain(sign.shown.iter().map(|(_, shown)| shown));
        let texts =
            std::iter::once(before(voice, sign.after.as_ref())).chain(shown.map(|one| voice.shown(one)));
        html! {
            <tr>
                <th scope="row">{ voice.action(&sign.act) }</th>
                { for columns.iter().skip(1).zip(texts).map(|(column, text)| cell(voice, column, text)) }
            </tr>
        }
    };
    html! {
        <>
            <h2>{ voice.text("atlas-course") }</h2>
            <table class="atlas-rows">
                { head(voice, &columns) }
                <tbody>{ for signs.iter().take(SIGNS).map(row) }</tbody>
            </table>
        </>
    }
}

/// The faults most like it.
pub fn twins(voice: &Voice, page: &Page) -> Html {
    html! {
        <table class="atlas-rows">
            { head(voice, &["atlas-twin", "atlas-by", "atlas-here", "atlas-there"]) }
            <tbody>{ for page.twins.iter().map(|one| twin(voice, one)) }</tbody>
        </table>
    }
}

fn twin(voice: &Voice, one: &Twin) -> Html {
    let href = format!("{}/{}", Route::Atlas.href(), one.fault);
    let [by, here, there] = match &one.by {
        Some((act, here, there)) => [voice.action(act), voice.shown(here), voice.shown(there)],
        None => [voice.text("atlas-one-repair"), String::new(), String::new()],
    };
    html! {
        <tr>
            <th scope="row"><a {href}>{ format!("{} {}", one.fault, voice.fault(one.fault)) }</a></th>
            { cell(voice, "atlas-by", by) }
            { cell(voice, "atlas-here", here) }
            { cell(voice, "atlas-there", there) }
        </tr>
    }
}
