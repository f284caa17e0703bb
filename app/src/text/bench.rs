//! Labels of the meter, the kit, the van and the notes.

use plant::{FaultId, Point};
use quantity::Seconds;

use super::{name, voice};
use crate::store::{Lead, Standing};

macro_rules! labels {
    ($($name:ident = $text:literal;)*) => {
        $(#[doc = $text] pub const $name: &str = $text;)*
    };
}

labels! {
    METER_DIAL = "Meter's dial";
    PLACE_LEADS = "Place the leads first";
    TAKE_READING = "Take the reading";
    OVER = "OL";
    TONE = "tone";
    NO_TONE = "no tone";
    LIVE_VOLTS = "V live";
    NOWHERE = "not placed";
    AROUND = "Clamp around";
    AROUND_TOO = "and around";
    NO_OTHER = "no other wire";
    LOW_BATTERY = "low battery";
    PROVE = "Prove and prepare the meter";
    PROVE_RECEPTACLE = "Prove: live receptacle";
    PROVE_UNIT = "Prove: proving unit";
    ZERO_LEADS = "Zero the leads";
    SPARE_LEADS = "Spare leads, new fuse";
    JACK_VOLTS = "Red lead to the volts jack";
    JACK_AMPS = "Red lead to the amperes jack";
    CHANGE_BATTERY = "Fresh battery";
    LOCK_AND_TAG = "Lock and tag";
    GLOVES = "Gloves";
    EYES = "Eye protection";
    HOSE_KIT = "Hose";
    GAUGE_KIT = "Pressure gauge";
    WAIT = "Wait";
    WAIT_VERB = "Wait";
    WAIT_CUT_OUT = "Wait for the cut-out";
    FIT = "Fit";
    THE_ONE = "the one that fits";
    ADD_SUSPECT = "Add a suspect";
    CHOOSE = "Choose";
    NOTHING_WRONG = "Nothing wrong with the heater";
    WRONG = "What is wrong";
    WRITE_FINDING = "Write the finding";
    WRITTEN = "Written down:";
}

/// A lead where it is, short.
pub fn lead_at(lead: Lead, at: Option<Point>) -> String {
    let on = at.map_or_else(|| "free".to_owned(), |point| format!("on {}", name::mark(point)));
    format!("{} {on}", super::lead(lead))
}

/// A lead's list.
pub fn lead_on(lead: Lead) -> String {
    format!("{} lead on", super::lead(lead))
}

/// A length of time in words.
pub fn minutes(minutes: f64) -> String {
    words::Units::Si.duration(Seconds::minutes(minutes))
}

/// Cost of parts so far.
pub fn cost(dollars: f64) -> String {
    format!("Parts so far: ${dollars:.0}")
}

/// A step's box.
pub fn evidence(step: u32) -> String {
    format!("Step {step} is evidence")
}

/// How many steps are ticked.
pub fn evidence_count(count: usize) -> String {
    match count {
        0 => "No step ticked as evidence. Tick the readings in the log that show it.".into(),
        1 => "1 step ticked as evidence.".into(),
        n => format!("{n} steps ticked as evidence."),
    }
}

/// How a suspect stands.
pub fn stands(standing: Standing, since: &str) -> String {
    match standing {
        Standing::Out => format!("out {since}"),
        other => super::standing(other).to_owned(),
    }
}

/// Dropping a suspect.
pub fn drop_suspect(id: FaultId) -> String {
    format!("Drop: {}", voice::fault(id))
}
