//! Labels of what can be done at the places.

use bench::{Cover, Fitting};
use plant::{Circuit, End, Layout, Screw, Tap};

use super::voice::{self, capital};
use crate::store::Lead;

macro_rules! labels {
    ($($name:ident = $text:literal;)*) => {
        $(#[doc = $text] pub const $name: &str = $text;)*
    };
}

labels! {
    CHOOSE_PLACE = "Choose a place on the drawing or from the list: the details and everything that can be done there open here.";
    SENSES = "With your senses";
    LOOK = "Look";
    LISTEN = "Listen";
    SMELL = "Smell";
    COVERS = "Covers";
    BREAKERS = "Breakers";
    LOCKOUT = "Lock, tag, try";
    BEHIND_FRONT = "Behind the front";
    MOVE_BREAKER = "Move a breaker to a space on both legs";
    MOVE = "Move";
    BOX_HANDLE = "Handle of the switch";
    BOX_LOCK = "Lock and tag on the switch";
    FUSES = "Fuses";
    TIMER = "Lever of the timer";
    BOX_CLOCK = "Clock";
    SET_CLOCK = "Set the clock to the time of day";
    WRITINGS = "Read";
    CONTROLS = "Controls";
    FLANGE = "Element flange and wall";
    PIPES = "Pipes and fittings";
    FITTINGS = "Fittings and floor";
    LEVER = "Lever";
    DRAIN_VALVE = "Drain valve";
    PRESSURE = "Pressure";
    TRY_START = "Try the start";
    READ_DIRECTORY = "Read the directory";
    CORRECT_LABEL = "Correct the directory";
    WRITE = "Write";
    READ_DIALS = "Read both dials";
    READ_DIAL = "Read the dial";
    READ_SETTING = "Read the setting";
    READ_STAMP = "Read the element's stamp";
    READ_DIAGRAM = "Read the wiring diagram";
    PRESS_RESET = "Press the reset button";
    PRESS_RESETS = "Press the reset buttons";
    SEAT = "Press the thermostat flat";
    DIAL = "Dial";
    SET = "Set";
    TURN = "Turn";
    FEEL_FLANGE = "Feel the flange";
    WIPE_FLANGE = "Wipe the flange dry";
    THERMOMETER_SHELL = "Thermometer on the tank wall";
    THERMOMETER_COLD = "Thermometer on the cold pipe";
    THERMOMETER_RELIEF = "Thermometer on the pipe";
    THERMOMETER_DRAIN = "Thermometer in the drain's water";
    THERMOMETER_TAP = "Thermometer";
    THERMOMETER_POINT = "Thermometer here";
    THERMOMETER_HOT = "Thermometer on the pipe at the nipple marked hot";
    WATER_METER = "Water meter";
    READ_WATER_METER = "Read it and watch its small dial";
    SAMPLE_HOT = "A glass from hot alone";
    SAMPLE_COLD = "A glass from cold alone";
    LOOK_AT_ANODE = "Unscrew the anode rod and look at it";
    STOPS = "Stops under it shut";
    TANK_CHARGE = "Charge of the expansion tank";
    FEEL_RELIEF_PIPE = "Feel the discharge pipe";
    FEEL_WATER = "Hand in the water";
    HOSE = "Hose on the drain";
    GAUGE = "Pressure gauge on";
    READ_GAUGE = "Read the gauge";
    RUN = "Run";
    POINT = "Point";
    PICK_POINT = "Pick a screw or a wire end";
    TOUCH = "Touch by hand";
    NON_CONTACT = "Non-contact tester";
    CLAMP_WIRE = "Clamp around this wire";
    LAND = "Land";
    LAND_ELSEWHERE = "On another screw";
}

/// The sensors' plugs in a board, upper sensor first.
pub const SENSOR_PLUGS: [&str; 2] = ["Upper sensor's plug in the board", "Lower sensor's plug in the board"];

/// The settings of a board, upper zone first.
pub const SETTINGS: [&str; 2] = ["Setting, upper zone", "Setting, lower zone"];

/// Taking a cover off, or putting it back.
pub fn cover_act(cover: Cover, off: bool, layout: Layout) -> String {
    let verb = if off { "off" } else { "back on" };
    super::fit(format!("{} {verb}", capital(&voice::cover(cover))), layout)
}

/// Moving a handle.
pub fn breaker_act(slot: u32, on: bool) -> String {
    format!("Breaker {} {}", slot + 1, if on { "on" } else { "off" })
}

/// Throwing the box in the line.
pub const fn box_act(closed: bool) -> &'static str {
    if closed { "Close it" } else { "Open it" }
}

/// A fuse out of its clips, or back.
pub fn pull_fuse(leg: plant::Stab) -> String {
    format!("Fuse of {} out", voice::leg(leg))
}

/// Ohms through a fuse.
pub fn test_fuse(leg: plant::Stab) -> String {
    format!("Ohms through the fuse of {}", voice::leg(leg))
}

/// A breaker to move.
pub fn space(slot: u32) -> String {
    format!("Breaker {}", slot + 1)
}

/// Own lock and tag.
pub fn lock_act(slot: u32) -> String {
    format!("Lock and tag on {}", slot + 1)
}

/// A line of the directory, corrected.
pub fn relabel(slot: u32, feeds: Circuit) -> String {
    format!("{} feeds: {}", slot + 1, voice::circuit(feeds))
}

/// Setting a valve.
pub const fn opening_act(opening: f64) -> &'static str {
    if opening <= 0.0 {
        "Shut"
    } else if opening < 0.4 {
        "A quarter"
    } else if opening < 0.9 {
        "Half"
    } else {
        "Full"
    }
}

/// Feeling a fitting.
pub fn feel(fitting: Fitting) -> String {
    format!("Feel: {}", voice::fitting(fitting))
}

/// Wiping a fitting.
pub fn wipe(fitting: Fitting) -> String {
    format!("Wipe dry: {}", voice::fitting(fitting))
}

/// The relief lever.
pub const fn lever_act(up: bool) -> &'static str {
    if up { "Lift the lever" } else { "Let the lever go" }
}

/// A tap as a heading.
pub fn tap_title(tap: Tap) -> String {
    capital(&voice::tap(tap))
}

/// A bucket at a tap.
pub fn bucket(tap: Tap) -> String {
    format!("Into a bucket, {}", voice::tap(tap))
}

/// A verb with its object, for a screen reader.
pub fn verb_of(verb: &str, object: &str) -> String {
    format!("{verb}: {object}")
}

/// Putting a lead here.
pub fn lead_here(lead: Lead) -> String {
    format!("{} here", super::lead(lead))
}

/// Taking a wire off.
pub fn lift(end: End) -> String {
    format!("Lift: {}", voice::wire(end.wire))
}

/// Labelling an end.
pub fn label_end(end: End) -> String {
    format!("Label: {}", voice::wire(end.wire))
}

/// Making a joint again.
pub fn remake(end: End, torqued: bool) -> String {
    let how = if torqued { "torqued" } else { "by feel" };
    format!("Cut back and make again, {how}: {}", voice::wire(end.wire))
}

/// Landing a wire.
pub fn land(end: End, screw: Screw, torqued: bool) -> String {
    let how = if torqued { "torqued" } else { "by feel" };
    format!("Land on {}, {how}: {}", screw.name(), voice::wire(end.wire))
}

/// A screw to land on.
pub fn screw_torqued(screw: Screw, torqued: bool) -> String {
    format!("{}, {}", screw.name(), if torqued { "torqued" } else { "by feel" })
}
