//! What can be done behind the covers.

use bench::{Action, Cover, Fitting, Probe, Session, Touchable, Writing};
use plant::{Level, Place};
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
    let mut reading = vec![Offer::plain(Action::Read { what: stamp }, text::READ_STAMP)];
    let dials = layout.has_thermostats();
    // A board carries the settings of both zones.
    if upper || dials {
        reading.insert(0, Offer::plain(Action::Read { what: Writing::Dials }, text::READ_DIALS));
    }
    if upper {
        reading.push(Offer::plain(Action::Read { what: Writing::Diagram }, text::READ_DIAGRAM));
    }
    let mut control = Vec::new();
    if upper {
        control.push(Offer::plain(Action::PressReset, text::PRESS_RESET));
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
    if upper || dials {
        control.push(Offer::plain(Action::TryStart, text::TRY_START));
    }
    if dials {
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
    let mut groups = vec![covers(session, cover), Group::new(text::WRITINGS, reading)];
    if !control.is_empty() {
        groups.push(Group::new(text::CONTROLS, control));
    }
    groups.push(Group::new(text::FLANGE, flange));
    groups
}

/// The dial's marks, the recommended one first.
fn dial(level: Level, units: Units) -> Vec<(String, Action)> {
    let mark = |f: u16| {
        let to = Temperature::fahrenheit(f64::from(f));
        (units.words().temperature(to), Action::Dial { level, to })
    };
    std::iter::once(mark(120)).chain(DIAL_MARKS.map(|n| n * 5).filter(|f| *f != 120).map(mark)).collect()
}
