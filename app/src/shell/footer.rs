//! The general caution, always on the screen.

use yew::prelude::*;

use crate::route::Route;
use crate::said::use_voice;
use crate::store::{Msg, use_work};
use crate::text;
use crate::units::Units;

/// The footer of every page.
#[component]
pub fn Footer(props: &FooterProps) -> Html {
    let work = use_work();
    let voice = use_voice();
    let units = work.desk.units;
    let other = {
        let work = work.clone();
        Callback::from(move |_| work.dispatch(Msg::OtherUnits))
    };
    html! {
        <footer class="footer">
            <p class="caution">{ text::CAUTION }</p>
            <a class="to-atlas" href={Route::Atlas.href()}>{ voice.text("atlas-link") }</a>
            <a class="to-glossary" href={Route::Glossary.href()}>{ voice.text("glossary-link") }</a>
            <a class="to-sources" href={Route::Sources.href()}>{ voice.text("sources-link") }</a>
            <button type="button" class="quiet" onclick={other} data-act="units">
                { if units == Units::Us { text::UNITS_US } else { text::UNITS_SI } }
            </button>
            { props.children.clone() }
        </footer>
    }
}

/// What else stands in the footer.
#[derive(Properties, PartialEq)]
pub struct FooterProps {
    /// More.
    #[prop_or_default]
    pub children: Html,
}
