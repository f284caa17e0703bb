//! What can be done behind the covers.

use bench::{Action, Cover, Fitting, Probe, Session, Touchable, Writing};
use plant::{Layout, Level, Place};
use quantity::Temperature;

use super::acts::{Group, covers};
use super::offer::Offer;
use crate::text;
use crate::units::Units;

/// The dial's marks, in °F: 90 to 150 (trade sheet 3.1, from memory).
const DIAL_MARKS: std::ops::RangeInclusive<u16> = 18..=30;

/// The acts of a compartment.
pub fn groups(place: Place, session: &Session, units: Units) -> Vec<Group> {
    let upper = place == Place::UpperCompartment;
    let level = if upper { Level::Upper } else { Level::Lower };
    let cover = Cover::over(level);
    let fitting = if upper { Fitting::UpperElement } else { Fitting::LowerElement };
    let stamp = if upper { Writing::StampUpper } else { Writing::StampLower };
    let layout = session.home.plant.wiring.layout;
    let dials = match layout {
        Layout::Electronic => text::READ_SETTING,
        Layout::SingleElement => text::READ_DIAL,
        _ => text::READ_DIALS,
    };
    let mut reading = vec![
        Offer::plain(Action::Read { what: Writing::Dials }, dials),
        Offer::plain(Action::Read { what: stamp }, text::READ_STAMP),
    ];
    if upper {
        reading.push(Offer::plain(Action::Read { what: Writing::Diagram }, text::READ_DIAGRAM));
    }
    let mut control = Vec::new();
    if upper {
        let buttons = if layout == Layout::OffPeak { text::PRESS_RESETS } else { text::PRESS_RESET };
        control.push(Offer::plain(Action::PressReset, buttons));
    }
    match session.home.plant.board {
        // Both sensors are plugged into the board, behind the upper cover.
        Some(board) if upper => {
            for ((&level, label), sensor) in Level::ALL.iter().zip(text::SENSOR_PLUGS).zip(board.sensors) {
                let plug = Action::Plug { level, fitted: !sensor.plugged };
                control.push(Offer::toggle(plug, label, sensor.plugged));
            }
        }
        Some(_) => {}
        None => control.push(Offer::plain(Action::Seat { level }, text::SEAT)),
    }
    control.push(Offer::plain(Action::TryStart, text::TRY_START));
    if layout.has_thermostats() {
        control.push(Offer::choose(text::DIAL, text::TURN, text::TURN_DIAL, dial(level, units)));
    } else if upper {
        for (&level, [label, says]) in Level::ALL.iter().zip(text::SETTINGS) {
            control.push(Offer::choose(label, text::SET, says, dial(level, units)));
        }
    }
    let flange = vec![
        Offer::plain(Action::Touch { at: Touchable::Fitting { fitting } }, text::FEEL_FLANGE),
        Offer::plain(Action::Wipe { fitting }, text::WIPE_FLANGE),
        Offer::plain(Action::Thermometer { at: Probe::Shell { level } }, text::THERMOMETER_SHELL),
    ];
    vec![
        covers(session, cover),
        Group::new(text::WRITINGS, reading),
        Group::new(text::CONTROLS, control),
        Group::new(text::FLANGE, flange),
    ]
}

/// The dial's marks, the recommended one first.
fn dial(level: Level, units: Units) -> Vec<(String, Action)> {
    let mark = |f: u16| {
        let to = Temperature::fahrenheit(f64::from(f));
        (units.words().temperature(to), Action::Dial { level, to })
    };
    std::iter::once(mark(120)).chain(DIAL_MARKS.map(|n| n * 5).filter(|f| *f != 120).map(mark)).collect()
}
