//! The house's main valve, where its water comes in. It is turned at the taps; a finger on the drawing leads there.

use plant::Place;
use yew::prelude::*;

use super::pipes::valve;
use crate::drill::place::go;
use crate::said::use_language;
use crate::store::use_work;
use crate::text;

/// As it stands.
#[derive(Properties, PartialEq)]
pub struct Props {
    /// Its opening.
    pub opening: f64,
}

/// The valve. Keys and readers have the place among the taps.
#[component]
pub fn MainValve(props: &Props) -> Html {
    use_language();
    let work = use_work();
    let onclick = Callback::from(move |_: MouseEvent| go(&work, Place::Taps));
    html! {
        <g class="spot" aria-hidden="true" {onclick}>
            { valve(24.0, 16.0, 11.0, props.opening) }
            <text x="42" y="33" class="lab">{ text::MAIN_SHORT }</text>
            if props.opening < 1.0 {
                <text x="6" y="47" class="sub">{ text::opening(props.opening) }</text>
            }
            <rect class="hit" x="2" y="2" width="106" height="33" />
        </g>
    }
}
