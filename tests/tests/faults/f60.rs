//! Thermistor open or shorted.
//! Trade sheet, section 9, F60: common practice, no source; the curve of 1.12 (computed from a common sensor).

use bench::{Action, Sight};
use drill::Order;
use plant::Screw::*;
use plant::controls::board::Lockout;
use plant::fault::{FaultId, PartKind};
use plant::{HeaterModel, Level, Place, Wire};

use crate::in_vain::*;
use crate::technician::*;
use crate::work::*;

const LOWER_OPEN: [(&str, f64); 2] = [("level", 1.0), ("short", 0.0)];
const UPPER_SHORTED: [(&str, f64); 2] = [("level", 0.0), ("short", 1.0)];

fn on_a_board(numbers: &[(&str, f64)]) -> Order {
    Order { heater: Some(HeaterModel::Board50), ..order(FaultId::F60, numbers) }
}

/// The board says which; unplugged, that sensor reads off its curve and the other on it.
fn worked(numbers: &[(&str, f64)], level: Level, says: Lockout) -> Work {
    let mut work = Work::at(&on_a_board(numbers));
    work.opens_up();
    let seen = work.look(Place::UpperCompartment);
    assert!(seen.contains(&Sight::BoardSays { lit: true, lockout: Some(says) }), "{seen:?}");
    let said = work.step();
    work.make_dead(&[K1, K2, K3, K4, T1, T2, T3, T4]);
    work.acts([Level::Upper, Level::Lower].map(|level| Action::Plug { level, fitted: false }));
    let read = |work: &mut Work, a, b, bad: bool| match (bad, says) {
        (true, Lockout::LowerOpen | Lockout::UpperOpen) => work.over(a, b),
        (true, _) => work.ohms(a, b, 0.0, 1.0),
        (false, _) => {
            let at =
                work.session.home.plant.wall(if level == Level::Upper { Level::Lower } else { Level::Upper });
            let sound = plant::controls::board::thermistor(at).get();
            work.ohms(a, b, sound, 0.1 * sound)
        }
    };
    let upper = read(&mut work, T1, T2, level == Level::Upper);
    let lower = read(&mut work, T3, T4, level == Level::Lower);
    let other = if level == Level::Upper { Level::Lower } else { Level::Upper };
    work.act(Action::Plug { level: other, fitted: true });
    work.finds(&[said, upper, lower]);
    work.fits(if level == Level::Upper { PartKind::UpperSensor } else { PartKind::LowerSensor });
    work.runs();
    work.amps(Wire::FeedA, 18.75);
    work.act(Action::WaitForCutOut);
    work.amps(Wire::FeedA, 0.0);
    work.acts(hand_over());
    work
}

pub fn perfect() -> Work {
    worked(&LOWER_OPEN, Level::Lower, Lockout::LowerOpen)
}

#[test]
fn a_new_sensor_cures() {
    perfect().cured();
    worked(&UPPER_SHORTED, Level::Upper, Lockout::UpperShorted).cured();
}

#[test]
fn a_board_does_not() {
    assert_in_vain(&on_a_board(&LOWER_OPEN));
}
