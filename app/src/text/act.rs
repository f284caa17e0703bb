//! The cautions that the riskiest acts carry, and parts with their numbers.

use bench::{Action, Cover, MeterFunction, NewPart};

use super::voice::say;
use crate::units::{self, Units};

/// A part's numbers, for a shelf that already names the part.
pub fn part_option(part: &NewPart, units: Units) -> String {
    match part {
        NewPart::Element { rating, seat_cleaned, .. } => {
            format!("{}, {}", say(units, |voice| voice.rating(*rating)), seat(*seat_cleaned))
        }
        NewPart::Gasket { seat_cleaned, .. } => seat(*seat_cleaned).to_owned(),
        NewPart::Breaker { rating } | NewPart::Fuse { rating } => format!("{:.0} A", rating.get()),
        NewPart::ReliefValve { opens_at } => units.words().pressure(*opens_at),
        NewPart::ExpansionTank { volume, charge } => {
            format!("{}, charged to {}", units.words().volume(*volume), units.words().pressure(*charge))
        }
        NewPart::Heater { nominal, rating } => {
            format!("{}, {}", units::size(*nominal, units), say(units, |voice| voice.rating(*rating)))
        }
        NewPart::Regulator { set } => units.words().pressure(*set),
        NewPart::MixingValve { set } => units.words().temperature(*set),
        NewPart::Anode { metal } => say(units, |voice| voice.text(&format!("anode-{metal}"))),
        NewPart::Cartridge { tap } => say(units, |voice| voice.tap(*tap)),
        NewPart::Sensor { .. }
        | NewPart::Board
        | NewPart::DrainValve
        | NewPart::Nipples
        | NewPart::Connections
        | NewPart::HotLine
        | NewPart::PipeClips
        | NewPart::ReturnCheck
        | NewPart::PumpTimer
        | NewPart::Thermostat { .. }
        | NewPart::Limit
        | NewPart::TimeSwitch
        | NewPart::Connectors
        | NewPart::DipTube => super::THE_ONE.to_owned(),
    }
}

const fn seat(cleaned: bool) -> &'static str {
    if cleaned { "seat cleaned" } else { "seat as it was" }
}

/// The caution that an act carries on the screen, where it is one of the riskiest.
pub const fn act_caution(action: &Action) -> Option<&'static str> {
    match action {
        Action::Cover { which: Cover::PanelFront, off: true } => {
            Some("The bus behind the front stays live with every breaker off. Many places reserve this work.")
        }
        Action::Meter { function: MeterFunction::Insulation, .. } => {
            Some("500 V on the leads. Only on a circuit proved dead, with hands off the metal.")
        }
        Action::Breaker { on: true, .. } => Some(
            "Before power: tank full, covers on, nobody's lock on it. An element in air burns out in seconds.",
        ),
        Action::ReliefLever { up: true } | Action::Drain { .. } => {
            Some("The water can scald. Keep people clear of the outlet.")
        }
        Action::Replace { .. } => {
            Some("Only dead, locked and proved; water work only drained below the opening.")
        }
        _ => None,
    }
}
