//! Limit and upper thermostat welded.
//! Trade sheet, section 9, F48: common practice, no source; water past 200 °F at the relief valve, the limit's button up
//! and its poles closed all the same.

use bench::{Action, Probe, Sight};
use plant::Screw::*;
use plant::fault::{FaultId, PartKind};
use plant::{Level, Place, Wire};
use quantity::Temperature;

use crate::in_vain::*;
use crate::technician::*;
use crate::work::*;

/// The button is up, and still the full volts pass: its contacts are welded.
pub fn perfect() -> Work {
    let mut work = Work::at(&order(FaultId::F48, &[]));
    work.opens_up();
    let hot = work.heats_past(Probe::Shell { level: Level::Upper }, 180.0);
    assert!(work.look(Place::UpperCompartment).contains(&Sight::Button { proud: true }));
    let proud = work.step();
    let closed = work.volts(H1, H2, 0.0);
    let passes = work.volts(H2, H4, 240.0);
    let runs = work.amps(Wire::UpperSwitched, 18.75);
    work.make_dead(&[H1, H2, H3, H4, U1, U2, U4]);
    work.act(Action::Dial { level: Level::Upper, to: Temperature::fahrenheit(90.0) });
    let welded = work.ohms(U1, U2, 0.0, 0.4);
    work.finds(&[hot, proud, closed, passes, runs, welded]);
    work.fits(PartKind::UpperThermostat);
    work.fits(PartKind::Limit);
    // The new limit lies on metal above its trip: it latches once the water is cool.
    work.draw(45.0);
    work.reset_limit();
    work.proves(18.75);
    work.acts(hand_over());
    work
}

#[test]
fn both_parts_cure() {
    perfect().cured();
}

#[test]
fn a_relief_valve_does_not() {
    assert_in_vain(&order(FaultId::F48, &[]));
}
