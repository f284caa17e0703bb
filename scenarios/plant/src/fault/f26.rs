//! The timer in the line, or a relay of the utility's, keeps the heater off: its contacts have burnt open, a timer's clock
//! stands half a day wrong since the power failed, so that its hours of rest fall into the day, or a relay's coil no longer
//! pulls in. Volts upstream of it, none downstream, outside its hours. A relay is sealed, and the utility's to mend.

use quantity::{Seconds, Tag};

use super::{
    Fault, FaultId, Parameter, Parameters, PartKind, Remedy, Scope, Stages, chosen, parameter, weight,
};
use crate::home::Home;
use crate::in_line::{BoxKind, InLineBox};
use crate::parts::Contact;

/// The number that says whose it is.
pub(super) const UTILITY: &str = "utility";

/// The catalogue entry.
pub const FAULT: Fault = Fault {
    id: FaultId::F26,
    module: module_path!(),
    weight: weight(15.0),
    parameters: &[
        Parameter::either("clock", "0 contacts burnt open, 1 clock wrong, or a relay not pulled in"),
        Parameter::between(
            "hours",
            [9.0, 13.0],
            "h slow",
            Tag::Model("its hours of rest fall between morning and evening"),
        ),
        Parameter::either(UTILITY, "0 the timer in the line, 1 the utility's relay; as the house has it"),
    ],
    // Burnt open, or set wrong by a power failure.
    stages: Stages::Sudden,
    fits,
    apply,
    remedies: &[Remedy::Replace(PartKind::TimeSwitch), Remedy::SetClock, Remedy::CallUtility],
    scope: Scope::Panel,
    tempting: PartKind::UpperElement,
};

/// A timer, or a relay of the utility's: in a house with both kinds of relay the one in the line comes first.
fn keeps_hours(one: &InLineBox, relay: bool) -> bool {
    one.hours.is_some() && (one.kind == BoxKind::UtilityRelay) == relay
}

fn fits(home: &Home) -> bool {
    home.plant.boxes().any(|one| one.hours.is_some())
}

/// Whether it is the utility's relay: in a house with one of the two only, that one.
fn is_theirs(parameters: &Parameters, home: &Home) -> bool {
    let there = |relay| home.plant.boxes().any(|one| keeps_hours(one, relay));
    match [there(false), there(true)] {
        [true, false] => false,
        [false, true] => true,
        _ => chosen(parameters, UTILITY),
    }
}

/// Sets the number that says whose it is to what the house has.
pub(super) fn place(parameters: &mut Parameters, home: &Home) {
    let theirs = f64::from(u8::from(is_theirs(parameters, home)));
    if let Some(utility) = parameters.get_mut(UTILITY) {
        *utility = theirs;
    }
}

fn apply(parameters: &Parameters, home: &mut Home) {
    let now = home.plant.clock;
    let relay = is_theirs(parameters, home);
    let Some(fitted) = home.plant.boxes_mut().find(|one| keeps_hours(one, relay)) else { return };
    if !chosen(parameters, "clock") {
        fitted.poles = [Contact::Open; 2];
    } else if relay {
        fitted.idle = true;
        fitted.closed = false;
    } else if let Some(hours) = &mut fitted.hours {
        hours.ahead = Seconds::hours(-parameter(parameters, "hours"));
        hours.on = hours.say(now);
        fitted.closed = hours.on;
    }
}
