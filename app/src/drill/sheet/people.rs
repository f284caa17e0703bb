//! The customer and the van.

use plant::Place;
use yew::prelude::*;

use super::Spot;
use crate::said::use_language;
use crate::text;

/// Both, in a few strokes.
#[component]
pub fn People() -> Html {
    use_language();
    html! {
        <>
            <Spot place={Place::Customer} area={(4.0, 462.0, 74.0, 150.0)}>
                <text x="14" y="478" class="lab">{ text::place(Place::Customer) }</text>
                <circle cx="44" cy="500" r="12" class="card" />
                <path class="card" d="M44 512c-16 0-22 12-22 28v32h44v-32c0-16-6-28-22-28Z" />
                <path class="ink" d="M36 572V613M52 572V613" />
            </Spot>
            <Spot place={Place::Van} area={(79.0, 540.0, 77.0, 72.0)}>
                // Between the customer and the side of the widest heater.
                <text x="117" y="556" class="lab middle">{ text::VAN_SHORT }</text>
                <path class="card" d="M84 566h38l14 16h14v24H84Z" />
                <path class="ink thin" d="M122 566V582H136" />
                <circle cx="98" cy="606" r="7" class="card" />
                <circle cx="134" cy="606" r="7" class="card" />
            </Spot>
        </>
    }
}
