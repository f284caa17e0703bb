//! Every fault by name, with a search.

use plant::fault::FaultId;
use yew::prelude::*;

use crate::route::Route;
use crate::said::use_voice;
use crate::shell::{has_words, search};

/// The list.
#[component]
pub fn Index() -> Html {
    let voice = use_voice();
    let words = use_state(String::new);
    let onwords = {
        let words = words.setter();
        Callback::from(move |to| words.set(to))
    };
    let has = |id: &&FaultId| has_words(&format!("{id} {}", voice.fault(**id)), &words);
    let shown: Vec<&FaultId> = FaultId::ALL.iter().filter(has).collect();
    html! {
        <>
            <h1>{ voice.text("atlas-title") }</h1>
            <p class="lead">{ voice.text("atlas-lead") }</p>
            <p class="note">{ voice.text("atlas-caution") }</p>
            { search(voice.text("atlas-search"), words.to_string(), onwords, None, html! {}) }
            <p class="found" role="status">
                { voice.filled("atlas-found", &[("count", (shown.len() as u32).into())]) }
            </p>
            <ol class="atlas-list">
                { for shown.iter().map(|id| html! {
                    <li key={id.name()}>
                        <a href={format!("{}/{}", Route::Atlas.href(), id.name())}>
                            <b>{ id.name() }</b><span>{ voice.fault(**id) }</span>
                        </a>
                    </li>
                }) }
            </ol>
            <details class="atlas-pairs">
                <summary>{ voice.text("atlas-pairs") }</summary>
                <p>{ voice.text("atlas-pairs-about") }</p>
                <img src="assets/asked/pairs.svg" loading="lazy" width="732" height="732" alt={voice.text("atlas-pairs-alt")} />
            </details>
        </>
    }
}
