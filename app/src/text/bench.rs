//! Labels of the meter, the kit, the van and the notes.

use plant::{FaultId, Point};
use quantity::Seconds;

use super::label::labels;
use super::{Label, filled, name, voice};
use crate::store::{Lead, Standing};

labels! {
    METER_DIAL = "kit-meter-dial";
    PLACE_LEADS = "kit-place-leads";
    PLACE_CLAMP = "kit-place-clamp";
    TAKE_READING = "kit-take-reading";
    OVER = "kit-over";
    TONE = "kit-tone";
    NO_TONE = "kit-no-tone";
    LIVE_VOLTS = "kit-live-volts";
    NOWHERE = "kit-nowhere";
    AROUND = "kit-around";
    AROUND_TOO = "kit-around-too";
    NO_OTHER = "kit-no-other";
    LOW_BATTERY = "kit-low-battery";
    PROVE = "kit-prove";
    PROVE_RECEPTACLE = "kit-prove-receptacle";
    PROVE_UNIT = "kit-prove-unit";
    ZERO_LEADS = "kit-zero-leads";
    SPARE_LEADS = "kit-spare-leads";
    JACK_VOLTS = "kit-jack-volts";
    JACK_AMPS = "kit-jack-amps";
    CHANGE_BATTERY = "kit-change-battery";
    LOCK_AND_TAG = "kit-lock-and-tag";
    GLOVES = "kit-gloves";
    EYES = "kit-eyes";
    HOSE_KIT = "kit-hose-kit";
    GAUGE_KIT = "kit-gauge-kit";
    WAIT = "kit-wait";
    WAIT_VERB = "kit-wait-verb";
    WAIT_CUT_OUT = "kit-wait-cut-out";
    USE_WATER = "kit-use-water";
    USE_WATER_VERB = "kit-use-water-verb";
    LET_THEM_USE = "kit-let-them-use";
    FIT = "kit-fit";
    LENGTH = "kit-length";
    MOUNT = "kit-mount";
    THE_ONE = "kit-the-one";
    ADD_SUSPECT = "kit-add-suspect";
    CHOOSE = "kit-choose";
    NOTHING_WRONG = "kit-nothing-wrong";
    WRONG = "kit-wrong";
    WRITE_FINDING = "kit-write-finding";
}

/// A lead where it is, short.
pub fn lead_at(lead: Lead, at: Option<Point>) -> String {
    let red = matches!(lead, Lead::Red);
    match at {
        None => super::text(if red { "kit-red-free" } else { "kit-black-free" }),
        Some(point) => {
            filled(if red { "kit-red-at" } else { "kit-black-at" }, &[("point", name::mark(point).into())])
        }
    }
}

/// A lead's list.
pub const fn lead_on(lead: Lead) -> Label {
    Label(match lead {
        Lead::Red => "kit-red-lead-on",
        Lead::Black => "kit-black-lead-on",
    })
}

/// A length of time in words.
pub fn minutes(minutes: f64) -> String {
    words::Units::Si.duration(Seconds::minutes(minutes))
}

/// Cost of parts so far, and the sum that people want to be asked about, once they said one.
pub fn cost(dollars: f64, most: Option<u16>) -> String {
    let fills = [("dollars", format!("{dollars:.0}").into()), ("most", most.unwrap_or_default().into())];
    filled(if most.is_some() { "kit-cost-asked" } else { "kit-cost" }, &fills)
}

/// A step's box.
pub fn evidence(step: u32) -> String {
    filled("kit-evidence", &[("step", step.into())])
}

/// How many steps are ticked.
pub fn evidence_count(count: usize) -> String {
    filled("kit-evidence-count", &[("count", (count as u32).into())])
}

/// How a suspect stands.
pub fn stands(standing: Standing, since: &str) -> String {
    match standing {
        Standing::Out => filled("kit-out-since", &[("since", since.into())]),
        other => super::standing(other).to_string(),
    }
}

/// The finding as it stands.
pub fn written(finding: Option<FaultId>) -> String {
    let fault = finding.map_or_else(|| NOTHING_WRONG.to_string(), voice::fault);
    filled("kit-written", &[("fault", fault.into())])
}

/// Dropping a suspect.
pub fn drop_suspect(id: FaultId) -> String {
    filled("kit-drop-suspect", &[("fault", voice::fault(id).into())])
}
