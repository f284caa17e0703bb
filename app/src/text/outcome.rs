//! What an act showed, and why one was not done.

use bench::{Bucket, Display, Refusal, Shown};

use super::{harm, name, person, sight};
use crate::units::{self, Units};

/// What was shown; empty when the act speaks for itself.
pub fn shown(shown: &Shown, units: Units) -> String {
    match shown {
        Shown::Meter { display: one } => display(*one),
        Shown::Clamp { amps } => units::amps(*amps),
        Shown::Temperature { reading } => units.thermometer(*reading),
        Shown::Bucket(one) => bucket(one, units),
        Shown::Pressure { now, highest } => {
            format!("{} now, highest {}", units.pressure(*now), units.pressure(*highest))
        }
        Shown::Charge { air: Some(air) } => units.pressure(*air),
        Shown::Charge { air: None } => "water comes out of the air valve".into(),
        Shown::Sights { sights, .. } | Shown::DoneWith { sights } => sight::sights(sights, units),
        Shown::Said { answer } => format!("“{}”", person::answer(*answer, units)),
        Shown::Plate { plate } => format!(
            "{}, {}, {}",
            units.size(plate.nominal),
            units::rating(plate.element),
            units.pressure(plate.working_pressure)
        ),
        Shown::Diagram => "every wire's own screw is on it".into(),
        Shown::Stamp { rating, .. } => units::rating(*rating),
        Shown::Directory { labels } => labels
            .iter()
            .map(|(circuit, amps)| format!("{} {:.0} A", name::circuit(*circuit), amps.get()))
            .collect::<Vec<_>>()
            .join(", "),
        Shown::Dials { upper, lower } => {
            format!("upper {}, lower {}", units.temperature(*upper), units.temperature(*lower))
        }
        Shown::Done => String::new(),
        Shown::Refused { why } => format!("Not done: {}", refusal(why)),
        Shown::Stopped { harm: one } => format!("The coach stopped this. {}", harm::harm(one, units)),
    }
}

fn display(display: Display) -> String {
    match display {
        Display::Volts { volts } => units::volts(volts),
        Display::Ohms { ohms } => units::ohms(ohms),
        Display::Insulation { ohms } => units::ohms(ohms),
        Display::Over => "over range".into(),
        Display::Tone { on: true } => "tone".into(),
        Display::Tone { on: false } => "no tone".into(),
        Display::Live { volts } => format!("live: {}", units::volts(volts)),
    }
}

fn bucket(one: &Bucket, units: Units) -> String {
    let fell = one
        .fell_after
        .map_or_else(String::new, |volume| format!(", fell 15 °F (8 K) after {}", units.volume(volume)));
    let spat = if one.spat { ", spat air" } else { "" };
    format!(
        "{} at {}, {} first, {} at the end{fell}{spat}",
        units.volume(one.volume),
        units.flow(one.flow),
        units.thermometer(one.first),
        units.thermometer(one.last)
    )
}

/// Why an act was not done.
pub fn refusal(why: &Refusal) -> String {
    match why {
        Refusal::CoverOn { cover } => format!("the {} is still on.", name::cover(*cover)),
        Refusal::OrderOfCovers { cover } => format!("the {} is in the way.", name::cover(*cover)),
        Refusal::AlreadySo => "it is so already.".into(),
        Refusal::NotHere => "there is no such thing here.".into(),
        Refusal::WireLanded { end } => format!("the {} is on a screw.", name::end(*end)),
        Refusal::WireLifted { end } => format!("the {} is not on a screw.", name::end(*end)),
        Refusal::OutOfReach { screw } => format!("the wire does not reach {}.", screw.name()),
        Refusal::Locked => "a lock is on it.".into(),
        Refusal::NotOff => "the breaker must be off before a lock goes on.".into(),
        Refusal::TankNotDrained { below } => {
            format!("water would come out. Drain the tank below {:.0} % first.", below * 100.0)
        }
        Refusal::UnderPressure => "the tank is still under pressure.".into(),
        Refusal::NoGauge => "no gauge is on.".into(),
        Refusal::NoFlow => "no water comes.".into(),
        Refusal::NothingToReach => "nothing of it can be reached from here.".into(),
        Refusal::OutOfRange => "that number makes no sense here.".into(),
        Refusal::NoSuchStep { step } => format!("step {step} does not exist yet."),
        Refusal::Over => "the job is over.".into(),
        Refusal::SamePoint => "both leads are on one point.".into(),
    }
}
