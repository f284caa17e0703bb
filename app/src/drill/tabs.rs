//! The sections of the drill at the foot of a phone.

use yew::prelude::*;

use crate::store::{Msg, Tab, use_work};
use crate::text;

/// The tabs. Buttons rather than a tab list: on wide screens every section is in view.
#[component]
pub fn Tabs() -> Html {
    let work = use_work();
    let tab = |one: Tab| {
        let here = work.desk.tab == one;
        let onclick = {
            let work = work.clone();
            Callback::from(move |_| work.dispatch(Msg::Turn(one)))
        };
        html! {
            <button
                type="button"
                data-tab={one.name()}
                aria-current={here.then_some("page")}
                {onclick}
            >
                { text::tab(one) }
            </button>
        }
    };
    html! { <nav class="tabs" aria-label={text::SECTIONS}>{ for Tab::ALL.map(tab) }</nav> }
}
