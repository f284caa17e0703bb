//! A text whose terms can be opened: a dotted line under the word, a link by keyboard and for a screen reader.

use yew::prelude::*;

use super::held::{Held, use_terms};
use super::terms::{Piece, Term};
use crate::route::Route;

/// The text.
#[derive(Properties, PartialEq)]
pub struct Props {
    /// What it says.
    pub text: AttrValue,
    /// The term that it explains: no link to itself.
    #[prop_or_default]
    pub of: Option<AttrValue>,
}

/// The text, as it is while the terms are not here.
#[component]
pub fn Marked(props: &Props) -> Html {
    let held = use_terms();
    let Some((held, terms)) = held.and_then(|held| Some((held.clone(), held.terms?))) else {
        return html! { <>{ &props.text }</> };
    };
    let piece = |piece: Piece| match piece {
        Piece::Plain(said) => html! { <>{ said.to_owned() }</> },
        Piece::Of(said, at) => match terms.all.get(at) {
            Some(term) if props.of.as_deref() == Some(&*term.id) => html! { <>{ said.to_owned() }</> },
            Some(term) => link(&held, term, at, said.to_owned()),
            None => html! {},
        },
    };
    html! { <>{ for terms.pieces(&props.text).into_iter().map(piece) }</> }
}

/// A term as a link: the page of terms has it too, and a plain press explains it on the spot.
pub fn link(held: &Held, term: &Term, at: usize, said: String) -> Html {
    let onclick = {
        let explain = held.explain.clone();
        Callback::from(move |event: MouseEvent| {
            // In a tab or a window of its own the browser goes to the page.
            if !(event.ctrl_key() || event.meta_key() || event.shift_key()) {
                event.prevent_default();
                explain.emit(at);
            }
        })
    };
    html! {
        <a class="term" href={format!("{}/{}", Route::Glossary.href(), term.id)} data-term={term.id.clone()} {onclick}>{ said }</a>
    }
}
