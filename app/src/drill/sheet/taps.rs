//! The sink for the taps of the house.

use bench::view::TapView;
use plant::Place;
use yew::prelude::*;

use super::Spot;
use crate::text;

/// The taps.
#[derive(Properties, PartialEq)]
pub struct Props {
    /// As they stand.
    pub taps: Vec<TapView>,
}

/// The sink.
#[component]
pub fn Taps(props: &Props) -> Html {
    let running = props.taps.iter().any(|one| one.flow.get() > 0.0);
    html! {
        <Spot place={Place::Taps} area={(372.0, 434.0, 84.0, 120.0)}>
            <text x="376" y="448" class="lab">{ text::place(Place::Taps) }</text>
            <text x="376" y="463" class="sub">{ text::taps(&props.taps) }</text>
            <path class="card" d="M380 522H456V534Q456 570 418 570Q380 570 380 534Z" />
            <path class="ink" d="M372 522H460M418 570V580H456" />
            <path class="spout" d="M404 522V490Q404 476 418 476Q430 476 430 488V494" />
            if running {
                <path class="running" d="M430 496V521" />
            }
            <circle cx="440" cy="506" r="8" class="knob" />
            <path class="ink" d="M440 514V522" />
        </Spot>
    }
}
