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

/// The search under a label: the words written in it, who is told each letter, an example, and what else narrows the list.
pub fn search(
    label: String,
    words: String,
    told: Callback<String>,
    example: Option<String>,
    narrows: Html,
) -> Html {
    let oninput = Callback::from(move |event: InputEvent| {
        told.emit(event.target_unchecked_into::<HtmlInputElement>().value());
    });
    html! {
        <form role="search" onsubmit={|event: SubmitEvent| event.prevent_default()}>
            <label class="field">
                <span>{ label }</span>
                <input type="search" value={words} {oninput} autocomplete="off" maxlength="60"
                    placeholder={example.unwrap_or_default()} data-field="search" />
            </label>
            { narrows }
        </form>
    }
}

/// Whether a text has every word that is searched for.
pub fn has_words(text: &str, words: &str) -> bool {
    let text = small(text);
    small(words).split_whitespace().all(|word| text.contains(word))
}
