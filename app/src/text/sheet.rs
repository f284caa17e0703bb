//! Short words on the drawing.

use bench::{Cover, Session};
use plant::{Level, Place, Plumbing, Tap};

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
pub const fn relief(plumbing: &Plumbing) -> &'static str {
    if plumbing.relief.lever { "lever up" } else { "lever down" }
}

/// The line at the drain.
pub fn drain(plumbing: &Plumbing) -> String {
    let hose = if plumbing.hose { "hose on" } else { "no hose" };
    let valve = if plumbing.drain_valve > 0.0 { "open" } else { "shut" };
    format!("{valve}, {hose}")
}

/// A detail's name.
pub fn detail(place: Place) -> String {
    format!("Detail: {}", super::place(place).to_lowercase())
}

/// A cover that is on.
pub fn on(cover: Cover) -> String {
    format!("{} on", voice::cover(cover))
}

/// A breaker's label that nobody has read.
pub const UNREAD: &str = "label not read";
