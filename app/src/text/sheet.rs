//! Short words on the drawing.

use bench::view::{TapView, View};
use bench::{Cover, Session};
use plant::{Layout, Level, Place, Tap};

use super::voice;
use crate::drill::known::Known;

/// The drawing as a whole.
pub const DRAWING: &str = "Drawing of the job";
/// Written inside the tank.
pub const INSIDE: [&str; 2] = ["inside", "not seen"];
/// The hot pipe, on two lines.
pub const HOT_PIPE: [&str; 2] = ["Hot", "to the house"];
/// The cold valve.
pub const COLD_VALVE: &str = "Cold shut-off";
/// A group of acts.
pub const RETURN_VALVE: &str = "Valve of the recirculation loop";
/// An act.
pub const THERMOMETER_RETURN: &str = "Thermometer on the loop’s return";
/// The drain.
pub const DRAIN_SHORT: &str = "Drain";
/// The van.
pub const VAN_SHORT: &str = "Van";
/// No tap is open.
pub const ALL_SHUT: &str = "all shut";

/// A tap in one word.
pub const fn tap_short(tap: Tap) -> &'static str {
    match tap {
        Tap::Laundry => "laundry",
        Tap::Kitchen => "kitchen",
        Tap::Bath => "bath",
        Tap::Shower => "shower",
    }
}

/// The lines under the load center: the handles that are known, and locks.
pub fn load_center(session: &Session, known: &Known) -> Vec<String> {
    if known.handles.is_empty() {
        return vec![super::NOT_LOOKED.to_owned()];
    }
    let breakers = &session.home.plant.panel.breakers;
    known
        .handles
        .iter()
        .map(|(slot, handle)| {
            let locked = breakers.get(*slot as usize).is_some_and(|one| one.locked);
            let lock = if locked { ", locked" } else { "" };
            format!("{}: {}{lock}", slot + 1, voice::handle(*handle))
        })
        .collect()
}

/// The line under a cover.
pub fn compartment(session: &Session, level: Level) -> String {
    let (plate, insulation, shield, place) = match level {
        Level::Upper => (Cover::Upper, Cover::UpperInsulation, Cover::UpperShield, Place::UpperCompartment),
        Level::Lower => (Cover::Lower, Cover::LowerInsulation, Cover::LowerShield, Place::LowerCompartment),
    };
    let off = &session.access.off;
    let wiring = &session.home.plant.wiring;
    let lifted = plant::End::all()
        .filter(|end| end.home().place() == place && wiring.joint(*end).on.is_none())
        .count();
    match () {
        () if !off.contains(&plate) => "on".into(),
        () if !off.contains(&insulation) => "off, insulation in".into(),
        () if !off.contains(&shield) => "off, shield in".into(),
        () if lifted == 1 => "off, 1 wire lifted".into(),
        () if lifted > 1 => format!("off, {lifted} wires lifted"),
        () => "off, screws bare".into(),
    }
}

/// The line at the relief valve.
pub const fn relief(view: &View) -> &'static str {
    match (view.lever, view.relief_runs) {
        (true, true) => "lever up, runs",
        (true, false) => "lever up",
        (false, true) => "water runs out",
        (false, false) => "pipe dry",
    }
}

/// The line at the drain.
pub const fn drain(view: &View) -> &'static str {
    match (view.drain_valve > 0.0, view.drain_flow.get() > 0.0) {
        (true, true) => "runs",
        (true, false) => "open, stands",
        (false, _) => "shut",
    }
}

/// Whether a hose is on the drain.
pub const fn hose(view: &View) -> &'static str {
    if view.hose { "hose on" } else { "no hose" }
}

/// The line at the taps.
pub fn taps(taps: &[TapView]) -> String {
    let open: Vec<String> = taps
        .iter()
        .filter(|one| one.opening > 0.0)
        .map(|one| match (one.flow.get() > 0.0, one.spitting) {
            (false, _) => format!("{}: dry", tap_short(one.tap)),
            (true, true) => format!("{} spits", tap_short(one.tap)),
            (true, false) => format!("{} runs", tap_short(one.tap)),
        })
        .collect();
    if open.is_empty() { ALL_SHUT.to_owned() } else { open.join(", ") }
}

/// The body that a sensor sits in.
pub const SENSOR: &str = "sensor";

/// A detail's name.
pub fn detail(place: Place, layout: Layout) -> String {
    format!("Detail: {}", super::place_of(place, layout).to_lowercase())
}

/// A cover that is on.
pub fn on(cover: Cover, layout: Layout) -> String {
    super::fit(format!("{} on", voice::capital(&voice::cover(cover))), layout)
}

/// A breaker's label that nobody has read.
pub const UNREAD: &str = "label not read";
