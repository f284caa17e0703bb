//! Upper thermostat welded between U1 and U2.
//! Trade sheet, section 9, F05: common practice, no source; 18.75 A of 2.1 (computed), dial + 15 °F.

use bench::{Action, Sight};
use plant::Screw::*;
use plant::fault::{FaultId, PartKind};
use plant::{Level, Place, Wire};
use quantity::Temperature;

use crate::in_vain::*;
use crate::technician::*;
use crate::work::*;

/// Found with the limit tripped. Once reset the top climbs past its dial with the element still fed; dead and
/// hot, dial down, the contact still reads closed.
pub fn perfect() -> Work {
    let mut work = Work::at(&order(FaultId::F05, &[]));
    work.opens_up();
    assert!(work.look(Place::UpperCompartment).contains(&Sight::Button { proud: true }));
    let flat = work.step();
    work.volts(H1, H3, 240.0);
    work.ghost(H2, H4);
    work.make_dead(&[UEa, UEb, LEa, LEb]);
    work.elements_clear();
    work.reset_limit();
    work.runs();
    work.amps(Wire::FeedA, 18.75);
    let hot = work.overheats(20.0, 120.0 + 15.0);
    work.acts(open(Level::Upper));
    work.acts(open(Level::Lower));
    let volts = work.volts(UEa, UEb, 240.0);
    let amps = work.amps(Wire::UpperSwitched, 18.75);
    work.make_dead(&[U1, U2, U4]);
    work.act(Action::Dial { level: Level::Upper, to: Temperature::fahrenheit(90.0) });
    let closed = work.ohms(U1, U2, 0.0, 0.4);
    work.finds(&[flat, hot, volts, amps, closed]);
    work.fits(PartKind::UpperThermostat);
    // What is too hot to hand over is drawn off.
    work.draw(20.0);
    work.proves(18.75);
    work.acts(hand_over());
    work
}

#[test]
fn the_right_part_cures() {
    perfect().cured();
}

#[test]
fn a_new_limit_does_not() {
    assert_in_vain(&order(FaultId::F05, &[]));
}
