//! Labels of what can be done at the places.

use bench::{Cover, Fitting};
use plant::{Circuit, End, Layout, Screw, Tap};

use super::label::labels;
use super::voice::{self, capital};
use super::{Label, filled};
use crate::store::Lead;

labels! {
    CHOOSE_PLACE = "do-choose-place";
    SENSES = "do-senses";
    LOOK = "do-look";
    LISTEN = "do-listen";
    SMELL = "do-smell";
    COVERS = "do-covers";
    COVERS_OFF = "do-covers-off";
    COVERS_ON = "do-covers-on";
    BREAKERS = "do-breakers";
    LOCKOUT = "do-lockout";
    PORTABLE = "do-portable";
    BEHIND_FRONT = "do-behind-front";
    MOVE_BREAKER = "do-move-breaker";
    MOVE = "do-move";
    BOX_HANDLE = "do-box-handle";
    BOX_LOCK = "do-box-lock";
    FUSES = "do-fuses";
    TIMER = "do-timer";
    BOX_CLOCK = "do-box-clock";
    SET_CLOCK = "do-set-clock";
    WRITINGS = "do-writings";
    CONTROLS = "do-controls";
    FLANGE = "do-flange";
    PIPES = "do-pipes";
    FITTINGS = "do-fittings";
    LEVER = "do-lever";
    DRAIN_VALVE = "do-drain-valve";
    PRESSURE = "do-pressure";
    TRY_START = "do-try-start";
    READ_DIRECTORY = "do-read-directory";
    CORRECT_LABEL = "do-correct-label";
    WRITE = "do-write";
    WRITE_LABEL = "do-write-label";
    READ_DIALS = "do-read-dials";
    READ_STAMP = "do-read-stamp";
    READ_DIAGRAM = "do-read-diagram";
    DIAGRAM = "diagram-title";
    DIAGRAM_LIST = "diagram-list";
    POINT_EMPTY = "point-empty";
    POINT_LIFTED = "point-lifted";
    POINT_LOOSE = "point-loose";
    POINT_LABELLED = "point-labelled";
    POINT_CHARRED = "point-charred";
    POINT_RED_LEAD = "point-red-lead";
    POINT_BLACK_LEAD = "point-black-lead";
    PRESS_RESET = "do-press-reset";
    SEAT = "do-seat";
    DIAL = "do-dial";
    SET = "do-set";
    TURN = "do-turn";
    TURN_DIAL = "do-turn-dial";
    FEEL_FLANGE = "do-feel-flange";
    WIPE_FLANGE = "do-wipe-flange";
    THERMOMETER_SHELL = "do-thermometer-shell";
    THERMOMETER_COLD = "do-thermometer-cold";
    THERMOMETER_RELIEF = "do-thermometer-relief";
    THERMOMETER_DRAIN = "do-thermometer-drain";
    THERMOMETER_TAP = "do-thermometer-tap";
    THERMOMETER_POINT = "do-thermometer-point";
    THERMOMETER_HOT = "do-thermometer-hot";
    RETURN_VALVE = "do-return-valve";
    THERMOMETER_RETURN = "do-thermometer-return";
    THAW = "do-thaw";
    VENTILATE = "do-ventilate";
    WATER_METER = "do-water-meter";
    MAIN_VALVE = "do-main-valve";
    READ_WATER_METER = "do-read-water-meter";
    SAMPLE_HOT = "do-sample-hot";
    SAMPLE_COLD = "do-sample-cold";
    LOOK_AT_ANODE = "do-look-at-anode";
    CHANGE_HEATER = "do-change-heater";
    PART_PIPES = "do-part-pipes";
    CARRY_HELPED = "do-carry-helped";
    CARRY_ALONE = "do-carry-alone";
    JOIN_DIELECTRIC = "do-join-dielectric";
    JOIN_BARE = "do-join-bare";
    REUSE_RELIEF = "do-reuse-relief";
    STOPS = "do-stops";
    TANK_CHARGE = "do-tank-charge";
    FEEL_RELIEF_PIPE = "do-feel-relief-pipe";
    FEEL_WATER = "do-feel-water";
    HOSE = "do-hose";
    GAUGE = "do-gauge";
    READ_GAUGE = "do-read-gauge";
    RUN = "do-run";
    POINT = "do-point";
    PICK_POINT = "do-pick-point";
    TOUCH = "do-touch";
    NON_CONTACT = "do-non-contact";
    CLAMP_WIRE = "do-clamp-wire";
    LAND = "do-land";
    LAND_ELSEWHERE = "do-land-elsewhere";
    LAND_ON_ANOTHER = "do-land-on-another";
}

/// The sensors' plugs in a board, upper sensor first.
pub const SENSOR_PLUGS: [Label; 2] = [Label("do-upper-plug"), Label("do-lower-plug")];

/// The settings of a board, upper zone first.
pub const SETTINGS: [[Label; 2]; 2] = [
    [Label("do-upper-zone"), Label("do-set-upper-zone")],
    [Label("do-lower-zone"), Label("do-set-lower-zone")],
];

/// Taking a cover off, or putting it back.
pub fn cover_act(cover: Cover, off: bool, layout: Layout) -> String {
    let id = if off { "do-cover-off" } else { "do-cover-on" };
    super::fit(filled(id, &[("cover", capital(&voice::cover(cover)).into())]), layout)
}

/// Moving a handle.
pub fn breaker_act(slot: u32, on: bool) -> String {
    filled(if on { "do-breaker-on" } else { "do-breaker-off" }, &[("slot", (slot + 1).into())])
}

/// Throwing the box in the line.
pub const fn box_act(closed: bool) -> Label {
    Label(if closed { "do-box-close" } else { "do-box-open" })
}

/// A fuse out of its clips, or back.
pub fn pull_fuse(leg: plant::Stab) -> String {
    filled("do-pull-fuse", &[("leg", voice::leg(leg).into())])
}

/// A portable heater at a receptacle.
pub fn portable(leg: plant::Stab) -> String {
    filled("do-portable-leg", &[("leg", voice::leg(leg).into())])
}

/// Ohms through a fuse.
pub fn test_fuse(leg: plant::Stab) -> String {
    filled("do-test-fuse", &[("leg", voice::leg(leg).into())])
}

/// A breaker to move.
pub fn space(slot: u32) -> String {
    filled("do-space", &[("slot", (slot + 1).into())])
}

/// Own lock and tag.
pub fn lock_act(slot: u32) -> String {
    filled("do-lock-and-tag", &[("slot", (slot + 1).into())])
}

/// A line of the directory, corrected.
pub fn relabel(slot: u32, feeds: Circuit) -> String {
    filled("do-relabel", &[("slot", (slot + 1).into()), ("feeds", voice::circuit(feeds).into())])
}

/// Setting a valve.
pub const fn opening_act(opening: f64) -> Label {
    Label(if opening <= 0.0 {
        "do-shut"
    } else if opening < 0.4 {
        "do-quarter"
    } else if opening < 0.9 {
        "do-half"
    } else {
        "do-full"
    })
}

/// Feeling a fitting.
pub fn feel(fitting: Fitting) -> String {
    filled("do-feel", &[("fitting", voice::fitting(fitting).into())])
}

/// Wiping a fitting.
pub fn wipe(fitting: Fitting) -> String {
    filled("do-wipe", &[("fitting", voice::fitting(fitting).into())])
}

/// The relief lever.
pub const fn lever_act(up: bool) -> Label {
    Label(if up { "do-lever-up" } else { "do-lever-down" })
}

/// A tap as a heading.
pub fn tap_title(tap: Tap) -> String {
    capital(&voice::tap(tap))
}

/// A bucket at a tap.
pub fn bucket(tap: Tap) -> String {
    filled("do-bucket", &[("tap", voice::tap(tap).into())])
}

/// Running a bucket full.
pub fn run_bucket(tap: Tap) -> String {
    filled("do-run-bucket", &[("tap", voice::tap(tap).into())])
}

/// Fitting a part.
pub fn fit_part(part: &str) -> String {
    filled("kit-fit-part", &[("part", part.into())])
}

/// Putting a lead here.
pub const fn lead_here(lead: Lead) -> Label {
    Label(match lead {
        Lead::Red => "do-red-here",
        Lead::Black => "do-black-here",
    })
}

/// Taking a wire off.
pub fn lift(end: End) -> String {
    filled("do-lift", &[("wire", voice::wire_of(end).into())])
}

/// Labelling an end.
pub fn label_end(end: End) -> String {
    filled("do-label", &[("wire", voice::wire_of(end).into())])
}

/// Making a joint again.
pub fn remake(end: End, torqued: bool) -> String {
    let id = if torqued { "do-remake-torqued" } else { "do-remake" };
    filled(id, &[("wire", voice::wire_of(end).into())])
}

/// Landing a wire.
pub fn land(end: End, screw: Screw, torqued: bool) -> String {
    let id = if torqued { "do-land-torqued" } else { "do-land-by-feel" };
    filled(id, &[("screw", screw.name().into()), ("wire", voice::wire_of(end).into())])
}

/// A screw to land on.
pub fn screw_torqued(screw: Screw, torqued: bool) -> String {
    let id = if torqued { "do-screw-torqued" } else { "do-screw-by-feel" };
    filled(id, &[("screw", screw.name().into())])
}
