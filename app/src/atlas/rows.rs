//! The two tables of a fault: what differs from the sound house, and what looks most like it.

use bench::Action;
use diagnosis::atlas::{Page, Twin};
use words::Voice;
use yew::prelude::*;

use crate::route::Route;

/// Differences shown.
const ROWS: usize = 14;

/// A cell that names its column where a narrow screen stands the row on end.
fn cell(voice: &Voice, column: &str, text: String) -> Html {
    html! { <td data-column={voice.text(column)}>{ text }</td> }
}

fn head(voice: &Voice, columns: &[&str]) -> Html {
    html! { <thead><tr>{ for columns.iter().map(|id| html! { <th scope="col">{ voice.text(id) }</th> }) }</tr></thead> }
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
        let before = row.after.as_ref().map_or_else(|| voice.text("atlas-as-found"), |act| voice.action(act));
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
