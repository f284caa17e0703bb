//! What a look around has found on the drawing: the return loop, the pipe of the relief valve, unions, the pan, and
//! traces of old troubles. Nothing of it is drawn before it was looked at.

use bench::Fitting;
use plant::{Discharge, Level, Recirculation};
use yew::prelude::*;

use super::frame::{BOTTOM, Frame};
use super::pipes::valve;
use crate::drill::known::{Found, Known};
use crate::text;

/// A stroke of a class.
fn ink(class: &'static str, way: String) -> Html {
    html! { <path {class} d={way} /> }
}

/// A drop at a fitting that was seen wet.
pub fn drop(known: &Known, fitting: Fitting, x: f64, y: f64) -> Html {
    html! {
        if known.wet.get(&fitting) == Some(&true) {
            { ink("water", format!("M{x} {y}q-9 13 0 14t0 -14Z")) }
        }
    }
}

/// The return loop: from the end of the hot branch by its pump, its check valve and its valve back to the drain.
pub fn return_loop(runs: bool, is: &Recirculation, frame: &Frame) -> Html {
    let down = frame.right() + 16.0;
    html! {
        <>
            { ink("hot return", format!("M461 104H{down}V584")) }
            <circle cx="426" cy="104" r="11" class="card" />
            { ink("ink thin", "M432 96L417 104L432 112".to_owned()) }
            { ink("card", "M400 95v18l-14-9Z".to_owned()) }
            { ink("ink thin", "M386 95v18".to_owned()) }
            { valve(368.0, 104.0, 8.0, is.valve) }
            <text x="366" y="132" class="lab">{ text::LOOP }</text>
            <text x="366" y="146" class="sub">{ text::pump(runs) }</text>
        </>
    }
}

/// The relief valve's pipe from here down, as it was laid; a crust of lime at its end.
pub fn discharge(found: &Found, x: f64, y: f64) -> Html {
    let straight = format!("M{x} {y}h10V604");
    let pipe = match found.discharge {
        None => ink("conduit", straight),
        Some(Discharge::Metal) => ink("copper", straight),
        Some(Discharge::Capped) => {
            html! { <>{ ink("copper", straight) }{ ink("ink", format!("M{x} 604h20")) }</> }
        }
        Some(Discharge::Plastic) => {
            html! { <>{ ink("plastic", straight.clone()) }{ ink("plastic bore", straight) }</> }
        }
        Some(Discharge::Uphill) => ink("copper", format!("M{x} {y}h10v96l14-30V604")),
    };
    let end = x + if found.discharge == Some(Discharge::Uphill) { 24.0 } else { 10.0 };
    html! {
        <>
            { pipe }
            if found.lime {
                { ink("lime", format!("M{} 607q2-7 6-4q2-4 5 0q4-2 5 4Z", end - 9.0)) }
            }
        </>
    }
}

/// Dielectric unions on both nipples, or plain couplings.
pub fn unions(dielectric: bool, shoulder: f64) -> Html {
    let y = shoulder - 30.0;
    [216.0, 280.0]
        .into_iter()
        .map(|x| {
            let band = format!("M{} {}h20", x - 10.0, y + 7.0);
            html! {
                <>
                    { ink("card", format!("M{} {y}h18v14h-18Z", x - 9.0)) }
                    if dielectric { { ink("ink", band) } }
                </>
            }
        })
        .collect()
}

/// The pan with its drain.
pub fn pan(frame: &Frame) -> Html {
    ink(
        "pan",
        format!(
            "M{} 600V611H{}V600M{} 608h12v5",
            frame.left() - 8.0,
            frame.right() + 8.0,
            frame.right() + 8.0
        ),
    )
}

/// A dry streak of rust down the jacket.
pub fn streak(frame: &Frame) -> Html {
    let x = frame.left() + 5.5;
    ink("streak", format!("M{x} {}V{}", frame.top + 44.0, BOTTOM - 26.0))
}

/// A line out of the wall that drips beside the feet.
pub fn condensate(frame: &Frame) -> Html {
    let x = frame.left() - 14.0;
    html! {
        <>
            { ink("ink thin", format!("M{} 570h22v14", x - 22.0)) }
            { ink("water", format!("M{x} 590q-9 13 0 14t0 -14Z")) }
        </>
    }
}

/// Old soot behind a cover whose left top is given.
pub fn soot(found: &Found, level: Level, x: f64, y: f64) -> Html {
    if found.soot != Some(level) {
        return html! {};
    }
    ink("soot", format!("M{x} {y}l7-9M{} {y}l10-13M{} {y}l10-13M{} {y}l7-9", x + 6.0, x + 12.0, x + 19.0))
}
