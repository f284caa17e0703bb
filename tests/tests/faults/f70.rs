//! Limit off the shell.
//! Trade sheet, section 9, F70: common practice, no source; water 10 °F and more above the limit's 170 °F, both poles
//! closed.

use bench::{Action, Probe, Sight};
use plant::Screw::*;
use plant::fault::{FaultId, PartKind};
use plant::{Level, Place, Wire};
use quantity::Temperature;

use crate::in_vain::*;
use crate::technician::*;
use crate::work::*;

const OFF: [(&str, f64); 1] = [("grip", 0.0)];

/// Far above its rating the limit still passes the full volts, and light shows behind it.
pub fn perfect() -> Work {
    let mut work = Work::at(&order(FaultId::F70, &OFF));
    work.opens_up();
    let hot = work.heats_past(Probe::Shell { level: Level::Upper }, 180.0);
    let seen = work.look(Place::UpperCompartment);
    assert!(
        seen.contains(&Sight::LimitOffTheShell { level: Level::Upper })
            && seen.contains(&Sight::Button { proud: false }),
        "{seen:?}"
    );
    let loose = work.step();
    let closed = work.volts(H1, H2, 0.0);
    let passes = work.volts(H2, H4, 240.0);
    let runs = work.amps(Wire::UpperSwitched, 18.75);
    work.make_dead(&[H1, H2, H3, H4, U1, U2, U4]);
    work.act(Action::Dial { level: Level::Upper, to: Temperature::fahrenheit(90.0) });
    let welded = work.ohms(U1, U2, 0.0, 0.4);
    work.finds(&[hot, loose, closed, passes, runs, welded]);
    work.fits(PartKind::UpperThermostat);
    work.fits(PartKind::Limit);
    assert!(!work.look(Place::UpperCompartment).contains(&Sight::LimitOffTheShell { level: Level::Upper }));
    // The new limit lies on metal above its trip: it does its work, and latches once the water is cool.
    work.draw(45.0);
    assert!(work.look(Place::UpperCompartment).contains(&Sight::Button { proud: true }));
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
    assert_in_vain(&order(FaultId::F70, &OFF));
}
