//! Thermostat off the shell.
//! Trade sheet, section 9, F33: common practice, no source; 10 to 20 °F low when lifted (3.3, from memory).

use bench::{Action, Sight};
use plant::fault::FaultId;
use plant::{Level, Place, Wire};

use crate::in_vain::*;
use crate::technician::*;
use crate::work::*;

const UPPER: [(&str, f64); 2] = [("level", 0.0), ("grip", 0.0)];

/// Too hot, both legs idle, and light between the thermostat and the shell.
pub fn perfect() -> Work {
    let mut work = Work::at(&order(FaultId::F33, &UPPER));
    work.acts(arrive());
    work.draw(36.0);
    work.act(Action::WaitForCutOut);
    let idle = work.amps(Wire::FeedA, 0.0);
    let tap = work.tap();
    assert!(tap > 132.0, "{tap} °F with the dial at 120");
    let hot = work.step() - 1;
    work.acts(open(Level::Upper));
    work.acts(open(Level::Lower));
    let seen = work.look(Place::UpperCompartment);
    assert!(seen.contains(&Sight::OffTheShell { level: Level::Upper }), "{seen:?}");
    let loose = work.step();
    work.make_dead(handled(plant::fault::PartKind::UpperThermostat));
    work.finds(&[idle, hot, loose]);
    work.act(Action::Seat { level: Level::Upper });
    assert!(!work.look(Place::UpperCompartment).contains(&Sight::OffTheShell { level: Level::Upper }));
    // What is too hot to hand over is drawn off.
    work.draw(36.0);
    work.proves(18.75);
    near(&"water at the tap, °F", work.tap(), 120.0, 10.0);
    work.acts(hand_over());
    work
}

#[test]
fn pressed_flat_cures() {
    perfect().cured();
}

#[test]
fn a_limit_does_not() {
    assert_in_vain(&order(FaultId::F33, &UPPER));
}
