//! What the last look at a place showed.

use std::rc::Rc;

use plant::Place;
use quantity::Seconds;
use yew::prelude::*;

use crate::drill::known::Known;
use crate::glossary::Marked;
use crate::said::use_units;
use crate::{text, units};

/// What is known, and the place.
#[derive(Properties, PartialEq)]
pub struct Props {
    /// What was perceived.
    pub known: Rc<Known>,
    /// Where.
    pub place: Place,
    /// Time of day when the job began.
    pub starts: Seconds,
}

/// The last look, if there was one.
#[component]
pub fn Seen(props: &Props) -> Html {
    let shown = use_units();
    let Some((when, sights)) = props.known.looked.get(&props.place) else { return html! {} };
    let clock = units::clock(props.starts + *when);
    html! {
        <div class="seen">
            <h3>{ text::SEEN }{ " " }<time>{ clock }</time></h3>
            <ul>{ for text::sights(sights, *when, shown).into_iter().map(|text| html! { <li><Marked {text} /></li> }) }</ul>
        </div>
    }
}
