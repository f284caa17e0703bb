//! The header of the pages around the drill.

use yew::prelude::*;

use super::Languages;
use crate::here::{HereButton, PageHere};
use crate::route::Route;
use crate::said::use_language;
use crate::text;

/// What stands in the header beside the name.
#[derive(Properties, PartialEq)]
pub struct Props {
    /// The page's tag; empty for none.
    #[prop_or_default]
    pub tag: AttrValue,
    /// The question mark stands in it and says what the page offers; a drill has one of its own.
    #[prop_or(true)]
    pub here: bool,
    /// Whatever else.
    #[prop_or_default]
    pub children: Html,
}

/// The header.
#[component]
pub fn Top(props: &Props) -> Html {
    use_language();
    html! {
        <header class="top">
            <a class="name" href={Route::Doors.href()}>{ text::NAME }</a>
            if !props.tag.is_empty() {
                <span class="tag">{ &props.tag }</span>
            }
            { props.children.clone() }
            if props.here {
                <HereButton sheet={|_| html! { <PageHere route={Route::now()} /> }} />
            }
            <Languages />
        </header>
    }
}
