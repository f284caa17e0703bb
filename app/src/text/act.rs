//! Acts as the job log tells them, and the cautions that the riskiest carry.

use bench::{Action, Cover, MeterFunction, NewPart};

use super::sight::capital;
use super::{fault, name, person};
use crate::units::{self, Units};

/// An act, as a line of the log.
pub fn act(action: &Action, units: Units) -> String {
    match action {
        Action::Ask { question } => person::question(*question).into(),
        Action::TellHousehold => "Household told: power and hot water off, touch nothing.".into(),
        Action::Read { what } => format!("Read the {}.", name::writing(*what)),
        Action::Look { at } => format!("Looked: {}.", lower(name::place(*at))),
        Action::Listen { at } => format!("Listened: {}.", lower(name::place(*at))),
        Action::Smell { at } => format!("Smelled: {}.", lower(name::place(*at))),
        Action::Touch { at } => format!("Hand on {}.", name::touchable(*at)),
        Action::Wipe { fitting } => format!("Wiped dry: {}.", name::fitting(*fitting)),
        Action::Gloves { on } => format!("Gloves {}.", on_off(*on)),
        Action::EyeProtection { on } => format!("Eye protection {}.", on_off(*on)),
        Action::Breaker { slot, on } => format!("{} {}.", capital(&name::slot(*slot)), on_off(*on)),
        Action::TryStart => "Tried the start.".into(),
        Action::Lock { slot, on } => format!("Own lock and tag {}: {}.", on_off(*on), name::slot(*slot)),
        Action::Relabel { slot, feeds } => {
            format!("Directory corrected: {} feeds {}.", name::slot(*slot), lower(name::circuit(*feeds)))
        }
        Action::Cover { which, off } => {
            format!("{} {}.", capital(name::cover(*which)), if *off { "off" } else { "back on" })
        }
        Action::Meter { function, red, black } => {
            format!("{}: {} to {}", name::function(*function), name::mark(*red), name::mark(*black))
        }
        Action::ZeroLeads => "Leads held together and zeroed.".into(),
        Action::ProveMeter { on } => format!("Meter on the {}", name::source(*on)),
        Action::SpareLeads => "Spare leads put on.".into(),
        Action::Clamp { around } => format!("Clamp: {}", name::clamped(*around)),
        Action::PressReset => "Reset button pressed.".into(),
        Action::Lift { end } => format!("Lifted: {}.", name::end(*end)),
        Action::Label { end } => format!("Labelled: {}.", name::end(*end)),
        Action::Land { end, screw, torqued } => {
            format!("Landed on {}, {}: {}.", screw.name(), torque(*torqued), name::end(*end))
        }
        Action::Remake { end, torqued } => {
            format!("Cut back and made again, {}: {}.", torque(*torqued), name::end(*end))
        }
        Action::Dial { level, to } => {
            format!("{} dial to {}.", capital(name::level(*level)), units.temperature(*to))
        }
        Action::Seat { level } => format!("{} thermostat pressed flat.", capital(name::level(*level))),
        Action::ColdValve { opening } => format!("Cold valve {}.", name::opening(*opening)),
        Action::Tap { tap, opening } => {
            format!("{} {}.", capital(name::tap(*tap)), name::opening(*opening))
        }
        Action::Bucket { tap, volume } => {
            format!("{} into a bucket, {}:", capital(name::tap(*tap)), units.volume(*volume))
        }
        Action::Hose { on } => format!("Hose {} the drain.", if *on { "on" } else { "off" }),
        Action::Drain { opening } => format!("Drain valve {}.", name::opening(*opening)),
        Action::ReliefLever { up: true } => "Relief lever held up.".into(),
        Action::ReliefLever { up: false } => "Relief lever let go.".into(),
        Action::Wait { minutes } => {
            format!("Waited {}.", units::duration(quantity::Seconds::minutes(*minutes)))
        }
        Action::WaitForCutOut => "Waited for the cut-out.".into(),
        Action::Thermometer { at } => format!("Thermometer: {}", name::probe(*at)),
        Action::Gauge { on } => format!("Pressure gauge {}.", on_off(*on)),
        Action::ReadGauge => "Gauge:".into(),
        Action::TankCharge => "Charge of the expansion tank:".into(),
        Action::Replace { part } => format!("Changed: {}.", new_part(part, units)),
        Action::Finding { fault: Some(id), evidence } => {
            format!("Finding: {}, on {}.", lower(fault::fault(*id)), steps(evidence.len()))
        }
        Action::Finding { fault: None, evidence } => {
            format!("Finding: nothing wrong, on {}.", steps(evidence.len()))
        }
        Action::Advise { advice } => format!("Advised: {}.", fault::advice(*advice)),
        Action::Report { what } => format!("Reported: {}.", fault::observation(*what)),
        Action::StopAndCall { whom } => format!("Stopped and called {}.", fault::helper(*whom)),
        Action::TellResult => "Customer told the result, and that the water will be hot.".into(),
        Action::HandOver => "Job handed over.".into(),
        Action::TimeUp { allowed } => format!("Time up: {allowed:.0} min by the wall clock."),
    }
}

/// A part with its numbers.
pub fn new_part(part: &NewPart, units: Units) -> String {
    let kind = lower(fault::part(part.kind()));
    match part {
        NewPart::Element { rating, seat_cleaned, .. } => {
            format!("{kind}, {}, {}", units::rating(*rating), seat(*seat_cleaned))
        }
        NewPart::Gasket { seat_cleaned, .. } => format!("{kind}, {}", seat(*seat_cleaned)),
        NewPart::Breaker { rating } | NewPart::Fuse { rating } => format!("{kind}, {:.0} A", rating.get()),
        NewPart::ReliefValve { opens_at } => format!("{kind}, {}", units.pressure(*opens_at)),
        NewPart::ExpansionTank { volume, charge } => {
            format!("{kind}, {}, charged to {}", units.volume(*volume), units.pressure(*charge))
        }
        NewPart::Heater { nominal, rating } => {
            format!("{kind}, {}, {}", units.size(*nominal), units::rating(*rating))
        }
        NewPart::Thermostat { .. } | NewPart::Limit | NewPart::DipTube => kind,
    }
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

fn lower(text: &str) -> String {
    let mut letters = text.chars();
    letters.next().map(|first| first.to_lowercase().chain(letters).collect()).unwrap_or_default()
}

const fn on_off(on: bool) -> &'static str {
    if on { "on" } else { "off" }
}

const fn torque(torqued: bool) -> &'static str {
    if torqued { "torqued" } else { "by feel" }
}

const fn seat(cleaned: bool) -> &'static str {
    if cleaned { "seat cleaned" } else { "seat as it was" }
}

fn steps(count: usize) -> String {
    match count {
        0 => "no evidence".into(),
        1 => "one step".into(),
        n => format!("{n} steps"),
    }
}
