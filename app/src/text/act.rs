//! The cautions that the riskiest acts carry, and parts with their numbers.

use bench::{Action, Cover, MeterFunction, NewPart};
use plant::heater::Rating;
use quantity::Volume;

use super::voice::{filled_in, say};
use super::{Label, text};
use crate::units::{self, Units};

/// A part's numbers, for a shelf that already names the part.
pub fn part_option(part: &NewPart, units: Units) -> String {
    match part {
        NewPart::Element { rating, length, seat_cleaned, .. } => {
            let fills = [
                ("rating", say(units, |voice| voice.rating(*rating)).into()),
                ("length", units.words().length(length.reach(rating.watts)).into()),
                ("seat", seat(*seat_cleaned).to_string().into()),
            ];
            filled_in(units, "kit-option-element", &fills)
        }
        NewPart::Gasket { seat_cleaned, .. } => seat(*seat_cleaned).to_string(),
        NewPart::Breaker { rating } | NewPart::Fuse { rating } => format!("{:.0} A", rating.get()),
        NewPart::ReliefValve { opens_at } => units.words().pressure(*opens_at),
        NewPart::ExpansionTank { volume, charge } => {
            let (volume, charge) = (units.words().volume(*volume), units.words().pressure(*charge));
            let fills = [("volume", volume.into()), ("charge", charge.into())];
            filled_in(units, "kit-option-expansion-tank", &fills)
        }
        NewPart::Regulator { set } => units.words().pressure(*set),
        NewPart::MixingValve { set } => units.words().temperature(*set),
        NewPart::Anode { metal } => text(&format!("anode-{metal}")),
        NewPart::Cartridge { tap } => super::tap(*tap),
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
        | NewPart::LowerLimit
        | NewPart::TimeSwitch
        | NewPart::Connectors
        | NewPart::DipTube => super::THE_ONE.to_string(),
    }
}

/// A new heater's numbers.
pub fn heater_option(nominal: Volume, rating: Rating, units: Units) -> String {
    format!("{}, {}", units::size(nominal, units), say(units, |voice| voice.rating(rating)))
}

const fn seat(cleaned: bool) -> Label {
    Label(if cleaned { "kit-seat-cleaned" } else { "kit-seat-as-it-was" })
}

/// The caution that an act carries on the screen, where it is one of the riskiest.
pub const fn act_caution(action: &Action) -> Option<Label> {
    Some(Label(match action {
        Action::Cover { which: Cover::PanelFront, off: true } => "caution-act-panel-front",
        Action::Meter { function: MeterFunction::Insulation, .. } => "caution-act-insulation",
        Action::Breaker { on: true, .. } => "caution-act-power",
        Action::ReliefLever { up: true } | Action::Drain { .. } => "caution-act-hot-water",
        Action::PortableHeater { .. } => "caution-act-portable",
        Action::Replace { .. } => "caution-act-replace",
        _ => return None,
    }))
}
