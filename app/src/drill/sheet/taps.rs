//! The sink for the taps of the house.

use bench::view::TapView;
use plant::Place;
use yew::prelude::*;

use super::Spot;
use crate::said::use_language;
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
    use_language();
    let running = props.taps.iter().any(|one| one.flow.get() > 0.0);
    html! {
        <Spot place={Place::Taps} area={(372.0, 412.0, 84.0, 140.0)}>
            <text x="376" y="426" class="lab">{ text::place(Place::Taps) }</text>
            <text x="376" y="441" class="sub">{ text::taps(&props.taps) }</text>
            <path class="card" d="M380 500H456V512Q456 548 418 548Q380 548 380 512Z" />
            <path class="ink" d="M372 500H460M418 548V558H458" />
            <path class="spout" d="M404 500V468Q404 454 418 454Q430 454 430 466V472" />
            if running {
                <path class="running" d="M430 474V499" />
            }
            <circle cx="440" cy="484" r="8" class="knob" />
            <path class="ink" d="M440 492V500" />
        </Spot>
    }
}
