//! The heater in section, with its covers as they are. What is inside the tank is not drawn: nobody sees it.

use std::rc::Rc;

use bench::{Cover, Fitting, Session};
use plant::{Layout, Level, Place};
use yew::prelude::*;

use super::Spot;
use super::found::{condensate, drop, pan, soot, streak};
use super::frame::{BOTTOM, Frame, MIDDLE};
use crate::drill::known::{Found, Known};
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

/// The heater.
#[component]
pub fn Heater(props: &Props) -> Html {
    use_language();
    let Props { session, known } = props;
    let plate = &session.home.plant.plate;
    let frame = Frame::of(plate);
    html! {
        <>
            { outline(&frame, &known.found) }
            { drop(known, Fitting::BottomRim, MIDDLE, BOTTOM - 1.0) }
            { inside(&frame, plate.has(Level::Lower)) }
            { junction_box(session, frame.top) }
            { compartment(session, known, &frame, Level::Upper) }
            if plate.has(Level::Lower) {
                { compartment(session, known, &frame, Level::Lower) }
            }
        </>
    }
}

/// Jacket, tank, feet; pan and streak where they were seen.
fn outline(frame: &Frame, found: &Found) -> Html {
    let (left, right) = (frame.left(), frame.right());
    html! {
        <>
            <path class="card" d={frame.jacket()} />
            <path class="tank" d={frame.shell()} />
            <path class="ink" d={format!("M{} 594V613M{} 594V613", left + 16.0, right - 16.0)} />
            if found.pan { { pan(frame) } }
            if found.streak { { streak(frame) } }
            if found.condensate { { condensate(frame) } }
        </>
    }
}

/// What nobody sees is said, not drawn; where there is room between the covers, or above a single one.
fn inside(frame: &Frame, two: bool) -> Html {
    let (from, to) = if two {
        (frame.cover_top(Level::Upper) + frame.cover + 30.0, frame.cover_top(Level::Lower))
    } else {
        (frame.tank_top, frame.cover_top(Level::Upper))
    };
    let middle = (from + to) / 2.0;
    html! {
        if to - from > 44.0 {
            <text x="248" y={(middle - 2.0).to_string()} class="sub middle">{ text::INSIDE[0] }</text>
            <text x="248" y={(middle + 13.0).to_string()} class="sub middle">{ text::INSIDE[1] }</text>
        }
    }
}

fn junction_box(session: &Session, top: f64) -> Html {
    let lid_off = session.access.off.contains(&Cover::JunctionBox);
    let y = top - 26.0;
    html! {
        <Spot place={Place::JunctionBox} area={(219.0, y - 20.0, 58.0, 58.0)}>
            <rect x="229" y={y.to_string()} width="38" height="28" class={classes!("card", lid_off.then_some("open"))} />
            if lid_off {
                <path class="ink thin" d={format!("M238 {0}v10M248 {0}v10M258 {0}v10", y + 10.0)} />
            }
        </Spot>
    }
}

fn compartment(session: &Session, known: &Known, frame: &Frame, level: Level) -> Html {
    let (place, cover, flange) = match level {
        Level::Upper => (Place::UpperCompartment, Cover::Upper, Fitting::UpperElement),
        Level::Lower => (Place::LowerCompartment, Cover::Lower, Fitting::LowerElement),
    };
    let layout = session.home.plant.wiring.layout;
    let y = frame.cover_top(level);
    let open = session.access.off.contains(&cover);
    let at = |dy: f64| (y + dy).to_string();
    let height = frame.cover;
    let element = y + height * 0.8;
    let button = known.buttons[level.index()];
    html! {
        <>
            <path class="copper" d={format!("M{} {element}H226", MIDDLE - frame.tank + 2.0)} />
            <Spot {place} area={(204.0, y - 6.0, 88.0, height + 36.0)}>
                <rect x="214" y={at(0.0)} width="68" height={height.to_string()} class={classes!("card", open.then_some("open"))} />
                if open {
                    <rect x="224" y={at(height * 0.11)} width="48" height={(height * 0.48).to_string()} class="part" />
                    if layout == Layout::Electronic && level == Level::Upper {
                        { board(y + height * 0.11, height * 0.48) }
                    }
                    { soot(&known.found, level, 250.0, y + height * 0.7) }
                    <circle cx="238" cy={element.to_string()} r="4.5" class="screw" />
                    <circle cx="258" cy={element.to_string()} r="4.5" class="screw" />
                    { drop(known, flange, 248.0, element + 3.0) }
                    if let Some(proud) = button {
                        // It stands out of its collar.
                        if proud {
                            <circle cx="248" cy={at(height * 0.23)} r="10" class="ink" />
                        }
                        <circle cx="248" cy={at(height * 0.23)} r={if proud { "7" } else { "5" }} class="reset" />
                    }
                } else {
                    <circle cx="248" cy={at(10.0)} r="2.5" class="ink thin" />
                    <circle cx="248" cy={at(height - 10.0)} r="2.5" class="ink thin" />
                }
                <text x="248" y={at(height + 13.0)} class="lab middle">{ text::cover_short(level) }</text>
                <text x="248" y={at(height + 26.0)} class="sub middle">{ text::compartment(session, level) }</text>
            </Spot>
        </>
    }
}

/// The board of an electronic heater: two relays over rows of little parts.
fn board(y: f64, height: f64) -> Html {
    let relay = height * 0.34;
    html! {
        <path
            class="card"
            d={format!("M228 {0}h16v{relay}h-16ZM252 {0}h16v{relay}h-16ZM228 {1}h40M228 {2}h26", y + 5.0, y + height * 0.66, y + height * 0.84)}
        />
    }
}
