//! Upper element fired dry.
//! Trade sheet, section 9, F16: common practice, no source; readings of row F of 1.6 (computed).

use bench::{Shown, Sight};
use plant::Screw::*;
use plant::fault::{FaultId, PartKind};
use plant::{Level, Wire};

use crate::in_vain::*;
use crate::technician::*;
use crate::work::*;

/// Volts and no current at the upper element; out of the tank it shows its burnt plating.
pub fn perfect() -> Work {
    let mut work = Work::at(&order(FaultId::F16, &[]));
    work.opens_up();
    let volts = work.volts(UEa, UEb, 240.0);
    let amps = work.amps(Wire::UpperSwitched, 0.0);
    work.make_dead(&[UEa, UEb, LEa, LEb]);
    work.acts(lift_element(Level::Upper));
    let upper = work.over(UEa, UEb);
    let lower = work.coil_is_whole(Level::Lower);
    work.finds(&[volts, amps, upper, lower]);
    work.acts(drain());
    let out = work.fits(PartKind::UpperElement).shown;
    let Shown::DoneWith { sights } = out else { panic!("{out:?}") };
    assert!(sights.contains(&Sight::ScorchedElement { level: Level::Upper }), "{sights:?}");
    work.acts(refill());
    work.ohms(UEa, UEb, 12.54, 0.1);
    work.acts(land_element(Level::Upper));
    work.proves(18.75);
    work.acts(hand_over());
    work
}

#[test]
fn a_new_element_cures() {
    perfect().cured();
}

#[test]
fn a_thermostat_does_not() {
    assert_in_vain(&order(FaultId::F16, &[]));
}
