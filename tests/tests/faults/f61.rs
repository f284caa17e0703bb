//! Relay of the board stuck or dead.
//! Trade sheet, section 9, F61: common practice, no source; 18.75 A of 2.1 (computed).

use bench::{Action, Sight};
use drill::Order;
use plant::Screw::*;
use plant::fault::{FaultId, PartKind};
use plant::{HeaterModel, Place, Wire};

use crate::in_vain::*;
use crate::technician::*;
use crate::work::*;

const LOWER_DEAD: [(&str, f64); 2] = [("level", 1.0), ("stuck", 0.0)];

fn on_a_board(numbers: &[(&str, f64)]) -> Order {
    Order { heater: Some(HeaterModel::Board50), ..order(FaultId::F61, numbers) }
}

/// The board calls, volts stand before the relay and none behind it.
pub fn perfect() -> Work {
    let mut work = Work::at(&on_a_board(&LOWER_DEAD));
    work.opens_up();
    work.until(Wire::FeedA, 0.0);
    let seen = work.look(Place::UpperCompartment);
    assert!(seen.contains(&Sight::BoardSays { lit: true, lockout: None }), "{seen:?}");
    let says = work.step();
    let none = work.amps(Wire::FeedA, 0.0);
    let in_ = work.volts(K1, K2, 240.0);
    let out = work.volts(K4, K2, 0.0);
    let idle = work.amps(Wire::BoardLower, 0.0);
    let shell = work.act(Action::Thermometer { at: bench::Probe::Shell { level: plant::Level::Lower } });
    let cold = work.step();
    assert!(matches!(shell.shown, bench::Shown::Temperature { reading } if reading.to_fahrenheit() < 100.0));
    work.make_dead(&[K1, K2, K3, K4]);
    work.finds(&[says, none, in_, out, idle, cold]);
    work.fits(PartKind::Board);
    work.runs();
    work.amps(Wire::FeedA, 18.75);
    work.act(Action::WaitForCutOut);
    work.amps(Wire::FeedA, 0.0);
    work.acts(hand_over());
    work
}

#[test]
fn a_new_board_cures() {
    perfect().cured();
}

#[test]
fn an_element_does_not() {
    assert_in_vain(&on_a_board(&LOWER_DEAD));
}
