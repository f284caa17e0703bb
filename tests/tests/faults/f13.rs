//! Lower element grounded in the middle of its coil.
//! Trade sheet, section 9, F13: common practice, no source; currents of 2.9 at x 0.5 (computed).

use bench::{Action, Sight};
use plant::Screw::*;
use plant::fault::{FaultId, PartKind};
use plant::{Level, Place, Wire};

use crate::in_vain::*;
use crate::technician::*;
use crate::work::*;

const HALF: [(&str, f64); 2] = [("fraction", 0.5), ("ohms", 0.05)];

/// Found with the limit tripped; before power comes back the elements are tested, and one end-to-end right reads
/// half to the sheath from both screws.
pub fn perfect() -> Work {
    let mut work = Work::at(&order(FaultId::F13, &HALF));
    work.opens_up();
    assert!(work.look(Place::UpperCompartment).contains(&Sight::Button { proud: true }));
    work.volts(H1, H3, 240.0);
    work.make_dead(&[UEa, UEb, LEa, LEb]);
    work.acts(lift_element(Level::Upper));
    work.insulated(UEa, Shell);
    work.acts(land_element(Level::Upper));
    work.acts(lift_element(Level::Lower));
    let whole = work.ohms(LEa, LEb, 12.54, 0.1);
    let a = work.ohms(LEa, Shell, 6.27, 0.1);
    let b = work.ohms(LEb, Shell, 6.27, 0.1);
    work.finds(&[whole, a, b]);
    work.fits_drained(PartKind::LowerElement);
    work.ohms(LEa, LEb, 12.54, 0.1);
    work.insulated(LEa, Shell);
    work.acts(land_element(Level::Lower));
    work.reset_limit();
    work.proves(18.75);
    work.acts(hand_over());
    work
}

#[test]
fn the_right_part_cures() {
    perfect().cured();
}

/// Reset and run without a test: calling it looks right, satisfied it heats on through the shell.
#[test]
fn satisfied_it_loads_leg_2_alone() {
    let mut work = Work::at(&order(FaultId::F13, &HALF));
    work.opens_up();
    work.make_dead(&[]);
    work.reset_limit();
    work.runs();
    // Cold: the upper element on both legs, and half of the lower one from leg 2 to the shell besides,
    // through the ground wire's own resistance.
    // Computed: leg 2 with its cable, contacts and leads has 0.055 ohms for both currents, the ground 0.046; so
    // (120 - 2.0) / 6.50 to the shell, and (240 - 3.1) / 12.83 through the upper element.
    work.amps(Wire::FeedA, 18.46);
    work.amps(Wire::FeedB, 36.61);
    work.amps(Wire::Bond, 18.15);
    work.act(Action::WaitForCutOut);
    work.amps(Wire::FeedA, 0.0);
    work.amps(Wire::FeedB, 18.31);
    work.amps(Wire::Bond, 18.31);
    // Cable, contacts and ground take four per cent.
    let watts = work.session.inside().watts[1].get();
    near(&"watts released", watts, 2250.0, 110.0);
}

#[test]
fn a_thermostat_does_not() {
    assert_in_vain(&order(FaultId::F13, &HALF));
}
