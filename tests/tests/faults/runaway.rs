//! An upper thermostat that runs away behind a limit that does not stop it: read hot, both parts changed.

use bench::{Action, Probe, Sight};
use plant::Screw::*;
use plant::fault::{FaultId, PartKind};
use plant::{Level, Place, Wire};
use quantity::Temperature;

use crate::technician::*;
use crate::work::*;

/// Far above its rating the limit still passes the full volts; what its compartment has to show is given.
#[track_caller]
pub fn stopped(fault: FaultId, numbers: &[(&str, f64)], shows: &[Sight]) -> Work {
    let mut work = Work::at(&order(fault, numbers));
    work.opens_up();
    let hot = work.heats_past(Probe::Shell { level: Level::Upper }, 180.0);
    let seen = work.look(Place::UpperCompartment);
    assert!(shows.iter().all(|sight| seen.contains(sight)), "{seen:?}");
    let shown = work.step();
    let closed = work.volts(H1, H2, 0.0);
    let passes = work.volts(H2, H4, 240.0);
    let runs = work.amps(Wire::UpperSwitched, 18.75);
    work.make_dead(&[H1, H2, H3, H4, U1, U2, U4]);
    work.act(Action::Dial { level: Level::Upper, to: Temperature::fahrenheit(90.0) });
    let welded = work.ohms(U1, U2, 0.0, 0.4);
    work.finds(&[hot, shown, closed, passes, runs, welded]);
    work.fits(PartKind::UpperThermostat);
    work.fits(PartKind::Limit);
    assert!(!work.look(Place::UpperCompartment).contains(&Sight::LimitOffTheShell { level: Level::Upper }));
    // Where the new limit lies on metal above its trip it does its work, and latches once the water is cool; where the
    // relief valve has just let the cold in, it has nothing to do.
    work.draw(45.0);
    if work.look(Place::UpperCompartment).contains(&Sight::Button { proud: true }) {
        work.reset_limit();
    }
    work.proves(18.75);
    work.acts(hand_over());
    work
}
