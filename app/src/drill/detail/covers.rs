//! Covers that are still on hide what is behind them.

use bench::{Cover, Session};
use plant::{Level, Place};
use yew::prelude::*;

use crate::text;

/// The covers in front of a place, outermost first.
pub const fn in_front(place: Place) -> &'static [Cover] {
    match place {
        Place::LoadCenter => &[Cover::PanelFront],
        Place::JunctionBox => &[Cover::JunctionBox],
        Place::InLineBox => &[Cover::BoxDoor],
        Place::UpperCompartment => Cover::over(Level::Upper),
        Place::LowerCompartment => Cover::over(Level::Lower),
        _ => &[],
    }
}

/// The outermost cover still on.
pub fn outermost(session: &Session, place: Place) -> Option<Cover> {
    in_front(place).iter().copied().find(|cover| !session.access.off.contains(cover))
}

/// Whether the points of a place can be seen: only a clear shield may be in front of them.
pub fn bare(session: &Session, place: Place) -> bool {
    matches!(outermost(session, place), None | Some(Cover::UpperShield | Cover::LowerShield))
}

/// The cover that is on, drawn over the detail.
pub fn covers(session: &Session, place: Place) -> Html {
    let Some(cover) = outermost(session, place) else { return html! {} };
    let layout = session.home.plant.wiring.layout;
    match cover {
        // The breakers' handles reach through the front.
        Cover::PanelFront => html! {},
        Cover::UpperShield | Cover::LowerShield => html! {
            <g class="shield">
                <rect x="20" y="16" width="300" height="298" rx="10" class="clear" />
                <text x="170" y="35" class="sub middle">{ text::on(cover, layout) }</text>
            </g>
        },
        Cover::UpperInsulation | Cover::LowerInsulation => html! {
            <g>
                <rect x="20" y="16" width="300" height="298" class="wool" />
                <rect x="82" y="146" width="176" height="36" class="label" />
                <text x="170" y="169" class="lab middle">{ text::on(cover, layout) }</text>
            </g>
        },
        Cover::JunctionBox | Cover::BoxDoor | Cover::Upper | Cover::Lower => html! {
            <g>
                <rect x="40" y="24" width="260" height="282" class="plate" />
                <circle cx="170" cy="44" r="6" class="screw" />
                <circle cx="170" cy="286" r="6" class="screw" />
                <text x="170" y="169" class="lab middle">{ text::on(cover, layout) }</text>
            </g>
        },
    }
}
