//! The timer in the line keeps the heater off: its contacts have burnt open, or its clock stands half a day wrong since
//! the power failed, so that its hours of rest fall into the day. Volts upstream of it, none downstream.

use quantity::{Seconds, Tag};

use super::{
    Fault, FaultId, Parameter, Parameters, PartKind, Remedy, Scope, Stages, chosen, parameter, weight,
};
use crate::home::Home;
use crate::in_line::BoxKind;
use crate::parts::Contact;

/// The catalogue entry.
pub const FAULT: Fault = Fault {
    id: FaultId::F26,
    module: module_path!(),
    weight: weight(15.0),
    parameters: &[
        Parameter::either("clock", "0 contacts burnt open, 1 clock wrong"),
        Parameter::between(
            "hours",
            [9.0, 13.0],
            "h slow",
            Tag::Model("its hours of rest fall between morning and evening"),
        ),
    ],
    // Burnt open, or set wrong by a power failure.
    stages: Stages::Sudden,
    fits,
    apply,
    remedies: &[Remedy::Replace(PartKind::TimeSwitch), Remedy::SetClock],
    scope: Scope::Panel,
    tempting: PartKind::UpperElement,
};

fn fits(home: &Home) -> bool {
    home.plant.in_line.is_some_and(|one| one.kind == BoxKind::Timer)
}

fn apply(parameters: &Parameters, home: &mut Home) {
    let now = home.plant.clock;
    let Some(fitted) = &mut home.plant.in_line else { return };
    if !chosen(parameters, "clock") {
        fitted.poles = [Contact::Open; 2];
    } else if let Some(hours) = &mut fitted.hours {
        hours.ahead = Seconds::hours(-parameter(parameters, "hours"));
        hours.on = hours.say(now);
        fitted.closed = hours.on;
    }
}
