//! What a candidate may expect, said before the start.

use drill::Order;
use yew::prelude::*;

use crate::said::{use_speech, use_voice};
use crate::shell::coming;
use crate::store::Rest;

/// The exam.
#[derive(Properties, PartialEq)]
pub struct Props {
    /// The drill.
    pub order: Order,
}

/// The terms, as a list.
#[component]
pub fn Expect(props: &Props) -> Html {
    let voice = use_voice();
    let rest = use_speech().rest;
    // They are told in the rest of the book.
    if rest != Rest::Here {
        return coming(rest == Rest::Failed);
    }
    let order = &props.order;
    let mut lines = vec![
        voice.text("page-expect-one-call"),
        voice.filled("page-expect-licence", &[("licence", voice.licence(order.licence).into())]),
        voice.text("page-expect-no-hints"),
    ];
    if let Some(minutes) = order.limit_minutes {
        lines.push(voice.filled("page-expect-limit", &[("minutes", minutes.into())]));
    }
    if let Some(minutes) = order.clock_minutes {
        lines.push(voice.filled("page-expect-clock", &[("minutes", minutes.into())]));
    }
    lines.push(voice.text("page-expect-reload"));
    lines.push(voice.text("page-expect-hand-in"));
    lines.push(voice.text("page-expect-no-debrief"));
    html! {
        <ul class="expect">{ for lines.into_iter().map(|line| html! { <li>{ line }</li> }) }</ul>
    }
}
