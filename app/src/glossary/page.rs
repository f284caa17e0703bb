//! All terms on one page, sorted, to search in; the one that the address names stands out.

use web_sys::HtmlInputElement;
use yew::prelude::*;

use super::held::use_terms;
use super::marked::Marked;
use crate::route::{Route, use_address};
use crate::said::use_voice;
use crate::shell::{Footer, Top};
use crate::store::use_work;
use crate::text;

/// The page.
#[component]
pub fn Glossary() -> Html {
    let voice = use_voice();
    let work = use_work();
    let asked = use_address().rest;
    let sought = use_state(String::new);
    let terms = use_terms().and_then(|held| held.terms);
    let there = terms.is_some();
    use_effect_with((asked.clone(), there), |(asked, _)| {
        let found = gloo::utils::document().get_element_by_id(&format!("term-{asked}"));
        if let Some(found) = found.filter(|_| !asked.is_empty()) {
            found.scroll_into_view();
        }
    });
    let oninput = {
        let sought = sought.setter();
        Callback::from(move |event: InputEvent| {
            sought.set(event.target_unchecked_into::<HtmlInputElement>().value())
        })
    };
    let seek = sought.trim().to_ascii_lowercase();
    let fits = |text: &str| text.to_ascii_lowercase().contains(&seek);
    let mut all: Vec<_> =
        terms.iter().flat_map(|terms| &terms.all).filter(|one| fits(&one.name) || fits(&one.means)).collect();
    quantity::sort::sort_by_key(&mut all, |one| one.name.to_ascii_lowercase());
    html! {
        <div class="page">
            <Top tag={voice.text("glossary-title")}>
                if work.running.is_some() {
                    <nav class="halves" aria-label={voice.text("sources-back")}>
                        <a class="half" href={Route::Drill.href()}>{ voice.text("page-resume") }</a>
                    </nav>
                }
            </Top>
            <main class="doors glossary" id="main">
                <h1>{ voice.text("glossary-heading") }</h1>
                <p class="lead">{ voice.text("glossary-lead") }</p>
                <label class="field">
                    <span>{ voice.text("glossary-seek") }</span>
                    <input type="search" value={(*sought).clone()} {oninput} maxlength="40" data-field="seek" />
                </label>
                if !there {
                    <p role="status">{ voice.text("glossary-coming") }</p>
                } else {
                    <p class="unseen" role="status">{ voice.filled("glossary-count", &[("count", (all.len() as u32).into())]) }</p>
                }
                <dl class="terms-list">
                    { for all.into_iter().map(|term| html! {
                        <div key={term.id.clone()} id={format!("term-{}", term.id)} class={classes!((term.id == asked).then_some("asked"))}>
                            <dt>{ text::capital(&term.name) }</dt>
                            <dd><Marked text={term.means.clone()} /></dd>
                        </div>
                    }) }
                </dl>
            </main>
            <Footer />
        </div>
    }
}
