//! What the customer said when the door opened.

use yew::prelude::*;

use crate::said::use_units;
use crate::store::World;
use crate::text;

/// The world.
#[derive(Properties, PartialEq)]
pub struct Props {
    /// The world.
    pub session: World,
}

/// The complaint, in the customer's words.
#[component]
pub fn Said(props: &Props) -> Html {
    let units = use_units();
    let words = text::complaint(&props.session.job.account, units);
    html! {
        <>
            <h2>{ text::CUSTOMER_SAYS }</h2>
            <blockquote class="card quote">{ format!("“{}”", words) }</blockquote>
        </>
    }
}
