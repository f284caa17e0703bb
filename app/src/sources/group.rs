//! The constants of one part of the world, folded away until they are asked for.

use words::Voice;
use yew::prelude::*;

use super::entry::Entry;

/// One group with those of its constants that are shown.
pub fn group(voice: &Voice, name: &str, entries: &[&Entry], open: bool) -> Html {
    html! {
        <details class="sources-group" {open} data-group={name.to_owned()} key={name.to_owned()}>
            <summary>
                <h2>{ voice.text(&format!("sources-group-{name}")) }</h2>
                <span class="count">
                    { voice.filled("sources-found", &[("count", (entries.len() as u32).into())]) }
                </span>
            </summary>
            <ul>{ for entries.iter().map(|entry| row(voice, entry)) }</ul>
        </details>
    }
}

fn row(voice: &Voice, entry: &Entry) -> Html {
    let kind = entry.kind.name();
    html! {
        <li class="source" key={entry.at.clone()}>
            <p class="what">{ &entry.name }</p>
            <p class="value">
                { for entry.value.split("; ").map(|row| html! { <b>{ row }</b> }) }
                if !entry.usual.is_empty() {
                    { for entry.usual.split("; ").map(|row| html! { <span>{ row }</span> }) }
                }
            </p>
            <p class="from">
                <span class={classes!("kind", kind)}>{ voice.text(&format!("sources-kind-{kind}")) }</span>
                { &entry.from }
                <code>{ &entry.at }</code>
            </p>
        </li>
    }
}
