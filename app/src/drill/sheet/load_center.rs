//! The load center on the drawing, as last seen.

use std::rc::Rc;

use bench::Cover;
use plant::{Handle, Place};
use yew::prelude::*;

use super::Spot;
use crate::drill::known::Known;
use crate::said::use_language;
use crate::store::World;
use crate::text;

/// The world and what is known of it.
#[derive(Properties, PartialEq)]
pub struct Props {
    /// The world.
    pub session: World,
    /// What was perceived.
    pub known: Rc<Known>,
}

/// The load center.
#[component]
pub fn LoadCenter(props: &Props) -> Html {
    use_language();
    let Props { session, known } = props;
    let front_off = session.access.off.contains(&Cover::PanelFront);
    let breakers = session.home.plant.panel.breakers.iter().enumerate().map(|(at, breaker)| {
        let slot = at as u32;
        breaker_html(slot, known.handles.get(&slot).copied(), breaker.locked)
    });
    let lines = text::load_center(session, known);
    html! {
        <Spot place={Place::LoadCenter} area={(8.0, 172.0, 116.0, 226.0)}>
            <text x="12" y="188" class="lab">{ text::place(Place::LoadCenter) }</text>
            <rect x="14" y="196" width="104" height="196" class={classes!("card", front_off.then_some("open"))} />
            <rect x="26" y="216" width="80" height="156" class="line" />
            <path d="M66 216V372M26 255H106M26 294H106M26 333H106" class="line" />
            { for breakers }
            { for lines.iter().enumerate().map(|(at, line)| html! {
                <text x="14" y={(410 + 15 * at).to_string()} class="sub">{ line }</text>
            }) }
        </Spot>
    }
}

/// A breaker in its space: the handle towards the middle is on, outwards off, between them tripped.
fn breaker_html(slot: u32, handle: Option<Handle>, locked: bool) -> Html {
    let y = 219 + 39 * slot;
    let x = match handle {
        Some(Handle::On) => 49,
        Some(Handle::Off) => 31,
        Some(Handle::Tripped) | None => 40,
    };
    let class = match handle {
        None => "handle unknown",
        Some(Handle::Tripped) => "handle tripped",
        Some(_) => "handle",
    };
    let lock = format!("M34 {}q-16 2-18 18v8h12v-8q0-8 9-11", y + 14);
    html! {
        <g>
            <rect x="28" y={y.to_string()} width="36" height="33" class="body" />
            <rect x={x.to_string()} y={(y + 5).to_string()} width="12" height="23" {class} />
            if locked {
                <path d={lock} class="hasp" />
                <rect x="8" y={(y + 38).to_string()} width="24" height="19" class="lock" />
            }
        </g>
    }
}
