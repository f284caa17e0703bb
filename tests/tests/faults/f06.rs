//! Lower thermostat welded between D1 and D2.
//! Trade sheet, section 9, F06: common practice, no source; 18.75 A of 2.1 (computed), water above the dial.

use bench::{Action, Sight};
use plant::Screw::*;
use plant::fault::{FaultId, PartKind};
use plant::{Level, Place, Wire};
use quantity::Temperature;

use crate::in_vain::*;
use crate::technician::*;
use crate::work::*;

/// Found with the limit tripped. Once reset the lower element heats the whole tank past its dial; dead and hot,
/// dial down, the contact still reads closed.
pub fn perfect() -> Work {
    let mut work = Work::at(&order(FaultId::F06, &[]));
    work.opens_up();
    assert!(work.look(Place::UpperCompartment).contains(&Sight::Button { proud: true }));
    work.volts(H1, H3, 240.0);
    work.ghost(H2, H4);
    work.make_dead(&[UEa, UEb, LEa, LEb]);
    work.elements_clear();
    work.reset_limit();
    work.runs();
    work.amps(Wire::FeedA, 18.75);
    let hot = work.overheats(105.0, 120.0 + 15.0);
    work.acts(open(Level::Upper));
    work.acts(open(Level::Lower));
    work.volts(UEa, UEb, 0.0);
    let volts = work.volts(LEa, LEb, 240.0);
    let amps = work.amps(Wire::LowerSwitched, 18.75);
    work.make_dead(&[D1, D2]);
    work.act(Action::Dial { level: Level::Lower, to: Temperature::fahrenheit(90.0) });
    let closed = work.ohms(D1, D2, 0.0, 0.4);
    work.finds(&[hot, volts, amps, closed]);
    work.fits(PartKind::LowerThermostat);
    work.draw(25.0);
    work.runs();
    work.until(Wire::FeedA, 18.75);
    work.act(Action::WaitForCutOut);
    work.amps(Wire::FeedA, 0.0);
    work.amps(Wire::FeedB, 0.0);
    work.acts(hand_over());
    work
}

#[test]
fn the_right_part_cures() {
    perfect().cured();
}

#[test]
fn a_new_limit_does_not() {
    assert_in_vain(&order(FaultId::F06, &[]));
}
