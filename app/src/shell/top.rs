//! The header of the pages around the drill.

use yew::prelude::*;

use super::Languages;
use crate::route::Route;
use crate::said::use_language;
use crate::text;

/// What stands in the header beside the name.
#[derive(Properties, PartialEq)]
pub struct Props {
    /// The page's tag; empty for none.
    #[prop_or_default]
    pub tag: AttrValue,
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
            <Languages />
        </header>
    }
}
