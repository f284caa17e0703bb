//! Short words on the drawing.

use bench::view::{TapView, View};
use bench::{Cover, Session};
use plant::{Circuit, Layout, Level, Place, Tap};
use quantity::Amps;

use super::label::labels;
use super::{Label, filled, text, voice};
use crate::drill::known::Known;

labels! {
    DRAWING = "sheet-drawing";
    COLD_VALVE = "sheet-cold-valve";
    RELAY_SHORT = "sheet-relay";
    MAIN_SHORT = "sheet-main-valve";
    RELIEF_SHORT = "sheet-relief-short";
    DRAIN_SHORT = "sheet-drain-short";
    LOOP = "sheet-loop";
    VAN_SHORT = "sheet-van-short";
    ALL_SHUT = "sheet-all-shut";
    SENSOR = "sheet-sensor";
}

/// Written inside the tank.
pub const INSIDE: [Label; 2] = [Label("sheet-inside-1"), Label("sheet-inside-2")];
/// The hot pipe, on two lines.
pub const HOT_PIPE: [Label; 2] = [Label("sheet-hot-pipe-1"), Label("sheet-hot-pipe-2")];

/// A tap in one word.
pub fn tap_short(tap: Tap) -> String {
    text(&format!("tap-short-{tap}"))
}

/// A breaker's line, with the directory's as far as it was read.
pub fn slot(slot: u32, label: Option<(Circuit, Amps)>) -> String {
    let slot = (slot + 1).into();
    match label {
        Some((circuit, amps)) => {
            let amps = format!("{:.0}", amps.get()).into();
            let circuit = voice::circuit(circuit).into();
            filled("sheet-slot", &[("slot", slot), ("circuit", circuit), ("amps", amps)])
        }
        None => filled("sheet-slot-unread", &[("slot", slot)]),
    }
}

/// The lines under the load center: the handles that are known, and locks.
pub fn load_center(session: &Session, known: &Known) -> Vec<String> {
    if known.handles.is_empty() {
        return vec![super::NOT_LOOKED.to_string()];
    }
    let breakers = &session.home.plant.panel.breakers;
    known
        .handles
        .iter()
        .map(|(slot, handle)| {
            let locked = breakers.get(*slot as usize).is_some_and(|one| one.locked);
            let id = if locked { "sheet-handle-locked" } else { "sheet-handle" };
            filled(id, &[("slot", (slot + 1).into()), ("handle", voice::handle(*handle).into())])
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
        () if !off.contains(&plate) => text("sheet-cover-on"),
        () if !off.contains(&insulation) => text("sheet-insulation-in"),
        () if !off.contains(&shield) => text("sheet-shield-in"),
        () if lifted > 0 => filled("sheet-wires-lifted", &[("count", (lifted as u32).into())]),
        () => text("sheet-screws-bare"),
    }
}

/// The line at the relief valve.
pub const fn relief(view: &View) -> Label {
    if !view.relief_there {
        return Label("sheet-no-relief");
    }
    Label(match (view.lever, view.relief_runs) {
        (true, true) => "sheet-lever-up-runs",
        (true, false) => "sheet-lever-up",
        (false, true) => "sheet-relief-runs",
        (false, false) => "sheet-pipe-dry",
    })
}

/// The line at the drain.
pub const fn drain(view: &View) -> Label {
    Label(match (view.drain_valve > 0.0, view.drain_flow.get() > 0.0) {
        (true, true) => "sheet-drain-runs",
        (true, false) => "sheet-drain-stands",
        (false, _) => "sheet-drain-shut",
    })
}

/// How the pump of a return loop was last heard.
pub const fn pump(runs: bool) -> Label {
    Label(if runs { "sheet-pump-hums" } else { "sheet-pump-rests" })
}

/// Whether a hose is on the drain.
pub const fn hose(view: &View) -> Label {
    Label(if view.hose { "sheet-hose-on" } else { "sheet-no-hose" })
}

/// The line at the taps.
pub fn taps(taps: &[TapView]) -> String {
    let open = taps
        .iter()
        .filter(|one| one.opening > 0.0)
        .map(|one| {
            let id = match (one.flow.get() > 0.0, one.spitting) {
                (false, _) => "sheet-tap-dry",
                (true, true) => "sheet-tap-spits",
                (true, false) => "sheet-tap-runs",
            };
            filled(id, &[("tap", tap_short(one.tap).into())])
        })
        .reduce(|before, next| filled("sheet-tap-more", &[("before", before.into()), ("next", next.into())]));
    open.unwrap_or_else(|| ALL_SHUT.to_string())
}

/// A detail's name.
pub fn detail(place: Place) -> String {
    filled("sheet-detail", &[("place", words::letters::small(&super::place(place)).into())])
}

/// A cover that is on.
pub fn on(cover: Cover, layout: Layout) -> String {
    super::fit(filled("sheet-on", &[("cover", voice::capital(&voice::cover(cover)).into())]), layout)
}
