//! All terms on one page, sorted, to search in; the one that the address names stands out.

use yew::prelude::*;

use super::held::use_terms;
use super::marked::Marked;
use crate::route::use_address;
use crate::said::use_voice;
use crate::shell::{Reference, coming, has_words, search};
use crate::text;

/// The page.
#[component]
pub fn Glossary() -> Html {
    let voice = use_voice();
    let asked = use_address().rest;
    let sought = use_state(String::new);
    let held = use_terms();
    let failed = held.as_ref().is_some_and(|held| held.failed);
    let terms = held.and_then(|held| held.terms);
    let there = terms.is_some();
    use_effect_with((asked.clone(), there), |(asked, _)| {
        let found = gloo::utils::document().get_element_by_id(&format!("term-{asked}"));
        if let Some(found) = found.filter(|_| !asked.is_empty()) {
            found.scroll_into_view();
        }
    });
    let onwords = {
        let sought = sought.setter();
        Callback::from(move |to| sought.set(to))
    };
    let fits = |text: &str| has_words(text, &sought);
    let mut all: Vec<_> =
        terms.iter().flat_map(|terms| &terms.all).filter(|one| fits(&one.name) || fits(&one.means)).collect();
    quantity::sort::sort_by_key(&mut all, |one| one.name.to_ascii_lowercase());
    html! {
        <Reference tag={voice.text("glossary-title")} class="glossary">
            <h1>{ voice.text("glossary-heading") }</h1>
            <p class="lead">{ voice.text("glossary-lead") }</p>
            { search(voice.text("glossary-seek"), sought.to_string(), onwords, None, html! {}) }
            if there {
                <p class="unseen" role="status">{ voice.filled("glossary-count", &[("count", (all.len() as u32).into())]) }</p>
            } else {
                { coming(failed) }
            }
            <dl class="terms-list">
                { for all.into_iter().map(|term| html! {
                    <div key={term.id.clone()} id={format!("term-{}", term.id)} class={classes!((term.id == asked).then_some("asked"))}>
                        <dt>{ text::capital(&term.name) }</dt>
                        <dd><Marked text={term.means.clone()} of={term.id.clone()} /></dd>
                    </div>
                }) }
            </dl>
        </Reference>
    }
}
