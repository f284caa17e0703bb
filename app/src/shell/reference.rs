//! The pages to look something up in: one frame, one search, one line while what they show is fetched.

use ::words::letters::small;
use web_sys::HtmlInputElement;
use yew::prelude::*;

use super::{Footer, Top};
use crate::route::Route;
use crate::said::use_language;
use crate::store::use_work;
use crate::text;

/// A page.
#[derive(Properties, PartialEq)]
pub struct Props {
    /// Its tag; empty for none.
    #[prop_or_default]
    pub tag: AttrValue,
    /// How it looks beside the common look.
    #[prop_or_default]
    pub class: Classes,
    /// What stands on it.
    pub children: Html,
}

/// The frame, with a way back to the job under way.
#[component]
pub fn Reference(props: &Props) -> Html {
    use_language();
    let work = use_work();
    html! {
        <div class="page">
            <Top tag={&props.tag}>
                if work.running.is_some() {
                    <nav class="halves" aria-label={text::UNDER_WAY}>
                        <a class="half" href={Route::Drill.href()}>{ text::RESUME }</a>
                    </nav>
                }
            </Top>
            <main class={classes!("doors", props.class.clone())} id="main">{ props.children.clone() }</main>
            <Footer />
        </div>
    }
}

/// The line while what a page shows is fetched, or once that has failed, with what to do.
pub fn coming(failed: bool) -> Html {
    let line = if failed { text::WORDS_FAILED } else { text::WORDS_COMING };
    html! { <p class="lead" role="status">{ line }</p> }
}

/// What is searched for.
#[derive(Properties, PartialEq)]
pub struct SearchProps {
    /// Its label.
    pub label: AttrValue,
    /// What is written in it.
    pub words: AttrValue,
    /// Told what is written in it.
    pub onwords: Callback<String>,
    /// An example.
    #[prop_or_default]
    pub example: AttrValue,
    /// What else narrows the list.
    #[prop_or_default]
    pub children: Html,
}

/// The search. What it finds follows each letter.
#[component]
pub fn Search(props: &SearchProps) -> Html {
    let told = props.onwords.clone();
    let oninput = Callback::from(move |event: InputEvent| {
        told.emit(event.target_unchecked_into::<HtmlInputElement>().value());
    });
    html! {
        <form role="search" onsubmit={|event: SubmitEvent| event.prevent_default()}>
            <label class="field">
                <span>{ &props.label }</span>
                <input type="search" value={&props.words} {oninput} autocomplete="off" maxlength="60"
                    placeholder={&props.example} data-field="search" />
            </label>
            { props.children.clone() }
        </form>
    }
}

/// Whether a text has every word that is searched for.
pub fn has_words(text: &str, words: &str) -> bool {
    let text = small(text);
    small(words).split_whitespace().all(|word| text.contains(word))
}
