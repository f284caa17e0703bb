//! What sits in the lines on the drawing: the house's box with its face, its handle, its lock; the utility's relay.

use bench::view::BoxView;
use plant::{BoxKind, Place};
use yew::prelude::*;

use super::Spot;
use crate::text;

/// The box, on the conduit between load center and heater.
pub fn in_line(seen: &BoxView) -> Html {
    let [first, second] = text::box_kind(seen.kind);
    let state = text::box_state(seen);
    html! {
        <Spot place={Place::InLineBox} area={(10.0, 100.0, 124.0, 68.0)}>
            <rect x="88" y="106" width="36" height="56" class="card" />
            { face(seen) }
            if seen.locked {
                <rect x="116" y="140" width="22" height="18" class="lock" />
            }
            <text x="84" y={if second.is_some() { "120" } else { "132" }} class="lab end">{ first }</text>
            <text x="84" y="135" class="lab end">{ second }</text>
            <text x="84" y="150" class="sub end">{ state }</text>
        </Spot>
    }
}

/// The utility's relay in the off-peak cable, its flag as last seen.
pub fn off_peak_relay(closed: Option<bool>) -> Html {
    let state = closed.map(text::contacts_state);
    html! {
        <>
            <rect x="184" y="90" width="24" height="24" class="card" />
            <path class="ink thin" d="M189 95v14M194 95v14M199 95v14M204 95v14" />
            <text x="180" y="112" class="lab end">{ text::RELAY_SHORT }</text>
            <text x="180" y="127" class="sub end">{ state }</text>
        </>
    }
}

fn face(seen: &BoxView) -> Html {
    match seen.kind {
        BoxKind::FusedSwitch => {
            // Up is on.
            let handle = if seen.closed == Some(false) { "M124 132l14 14" } else { "M124 132l14 -14" };
            html! { <path class="ink" d={format!("{handle}M98 118v32M114 118v32")} /> }
        }
        BoxKind::Timer => html! {
            <g>
                <circle cx="106" cy="134" r="13" class="card" />
                <path class="ink thin" d="M106 134V125M106 134l6 4" />
            </g>
        },
        BoxKind::UtilityRelay => {
            html! { <path class="ink thin" d="M96 124v20M102 124v20M108 124v20M114 124v20" /> }
        }
    }
}
