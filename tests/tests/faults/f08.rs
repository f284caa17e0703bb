//! Limit tripped, its cause gone.
//! Trade sheet, section 9, F08: common practice, no source; readings of row D of 1.6 (computed).

use bench::Sight;
use plant::Screw::*;
use plant::fault::FaultId;
use plant::{Level, Place};

use crate::in_vain::*;
use crate::technician::*;
use crate::work::*;

/// Line volts in, none out; the elements are clear, it latches cool, and the heater cuts out at its dial.
pub fn perfect() -> Work {
    let mut work = Work::at(&order(FaultId::F08, &[]));
    work.opens_up();
    assert!(work.look(Place::UpperCompartment).contains(&Sight::Button { proud: true }));
    let line = work.volts(H1, H3, 240.0);
    let dead = work.ghost(H2, H4);
    work.ghost(H1, H2);
    work.ghost(H3, H4);
    work.ghost(UEa, UEb);
    work.volts(H1, Shell, 120.0);
    work.volts(H3, Shell, 120.0);
    work.ghost(UEb, Shell);
    work.make_dead(&[UEa, UEb, LEa, LEb]);
    work.acts(lift_element(Level::Upper));
    let upper = work.insulated(UEa, Shell);
    work.acts(land_element(Level::Upper));
    work.acts(lift_element(Level::Lower));
    let lower = work.insulated(LEa, Shell);
    // A coil with shorted turns may have tripped it too: the lower one's ohms tell, the upper one's current.
    let coil = work.ohms(LEa, LEb, 12.54, 0.2);
    work.acts(land_element(Level::Lower));
    let clicked = work.reset_limit();
    work.proves(18.75);
    let idle = work.step();
    // Before the wait and the second leg.
    let loaded = idle - 3;
    // 0 A alone would also be a limit that tripped again; the water tells that it was the dial.
    near(&"water at the tap, °F", work.tap(), 120.0, 8.0);
    let at_the_dial = work.step() - 1;
    work.finds(&[line, dead, upper, lower, coil, clicked, loaded, idle, at_the_dial]);
    work.acts(hand_over());
    work
}

#[test]
fn the_button_cures() {
    perfect().cured();
}

#[test]
fn an_element_does_not() {
    assert_in_vain(&order(FaultId::F08, &[]));
}
