//! The terms that occur in what a panel says on buttons and in lists, where a word cannot be a link: one small line.

use yew::prelude::*;

use super::held::use_terms;
use super::marked::link;
use super::terms::Piece;
use crate::said::use_voice;
use crate::text;

/// What the panel says.
#[derive(Properties, PartialEq)]
pub struct Props {
    /// Its texts.
    pub texts: Vec<AttrValue>,
}

/// The line; nothing when no term occurs.
#[component]
pub fn WordsHere(props: &Props) -> Html {
    let voice = use_voice();
    let Some((held, terms)) = use_terms().and_then(|held| Some((held.clone(), held.terms?))) else {
        return html! {};
    };
    let mut at: Vec<usize> = Vec::new();
    for text in &props.texts {
        for piece in terms.pieces(text) {
            if let Piece::Of(_, term) = piece
                && !at.contains(&term)
            {
                at.push(term);
            }
        }
    }
    // The file goes by the alphabet, nearly enough.
    at.sort_unstable();
    if at.is_empty() {
        return html! {};
    }
    let one = |at: usize| {
        let term = terms.all.get(at)?;
        Some(html! { <li>{ link(&held, term, at, text::capital(&term.name)) }</li> })
    };
    html! {
        <details class="words-here">
            <summary>{ voice.text("glossary-here") }</summary>
            <ul>{ for at.into_iter().filter_map(one) }</ul>
        </details>
    }
}
