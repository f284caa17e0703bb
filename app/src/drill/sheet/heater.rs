//! The heater in section, with its covers as they are. What is inside the tank is not drawn: nobody sees it.

use std::rc::Rc;

use bench::{Cover, Session};
use plant::{Level, Place};
use yew::prelude::*;

use super::Spot;
use crate::drill::known::Known;
use crate::text;

/// The world and what is known of it.
#[derive(Properties, PartialEq)]
pub struct Props {
    /// The world.
    pub session: Rc<Session>,
    /// What was perceived.
    pub known: Rc<Known>,
}

/// The heater.
#[component]
pub fn Heater(props: &Props) -> Html {
    let Props { session, known } = props;
    let lid_off = session.access.off.contains(&Cover::JunctionBox);
    html! {
        <>
            <path class="card" d="M170 160q0-26 78-26t78 26V574q0 22-78 22t-78-22Z" />
            <path class="tank" d="M190 172q0-15 58-15t58 15V562q0 14-58 14t-58-14Z" />
            <path class="ink" d="M184 596V613M312 596V613" />
            <path class="pan" d="M158 602V611H338V602" />
            <path class="copper" d="M192 292H226M192 512H226" />
            <text x="248" y="384" class="sub middle">{ text::INSIDE[0] }</text>
            <text x="248" y="399" class="sub middle">{ text::INSIDE[1] }</text>
            <Spot place={Place::JunctionBox} area={(220.0, 88.0, 56.0, 54.0)}>
                <rect x="229" y="106" width="38" height="28" class={classes!("card", lid_off.then_some("open"))} />
                if lid_off {
                    <path class="ink thin" d="M238 116v10M248 116v10M258 116v10" />
                }
            </Spot>
            { compartment(session, known, Level::Upper) }
            { compartment(session, known, Level::Lower) }
        </>
    }
}

fn compartment(session: &Session, known: &Known, level: Level) -> Html {
    let (place, cover, y) = match level {
        Level::Upper => (Place::UpperCompartment, Cover::Upper, 214.0),
        Level::Lower => (Place::LowerCompartment, Cover::Lower, 434.0),
    };
    let open = session.access.off.contains(&cover);
    let at = |dy: f64| (y + dy).to_string();
    let button = level == Level::Upper && known.button.is_some();
    let proud = known.button == Some(true);
    html! {
        <Spot {place} area={(204.0, y - 8.0, 88.0, 138.0)}>
            <rect x="214" y={at(0.0)} width="68" height="96" class={classes!("card", open.then_some("open"))} />
            if open {
                <rect x="224" y={at(11.0)} width="48" height="46" class="part" />
                <circle cx="238" cy={at(78.0)} r="4.5" class="screw" />
                <circle cx="258" cy={at(78.0)} r="4.5" class="screw" />
                if button {
                    <circle cx="248" cy={at(22.0)} r={if proud { "7" } else { "5" }} class="reset" />
                }
            } else {
                <circle cx="248" cy={at(10.0)} r="2.5" class="ink thin" />
                <circle cx="248" cy={at(86.0)} r="2.5" class="ink thin" />
            }
            <text x="248" y={at(112.0)} class="lab middle">{ text::cover_short(level) }</text>
            <text x="248" y={at(126.0)} class="sub middle">{ text::compartment(session, level) }</text>
        </Spot>
    }
}
