//! Upper thermostat never feeds the upper element.
//! Trade sheet, section 9, F11: common practice, no source; expected values computed in 1.6 for an open U1-U2.

use plant::Screw::*;
use plant::fault::{FaultId, PartKind};
use plant::{Level, Wire};

use crate::in_vain::*;
use crate::technician::*;
use crate::work::*;

/// Cold top: the supply stands across U1-U2 and none at the element; the blade open both ways or stuck over.
fn worked(stuck_over: bool) -> Work {
    let mut work = Work::at(&order(FaultId::F11, &[("blade", f64::from(u8::from(stuck_over)))]));
    work.acts(arrive());
    if stuck_over {
        work.draw(40.0);
    }
    work.acts(open(Level::Upper));
    work.acts(open(Level::Lower));
    work.volts(H2, H4, 240.0);
    let across = work.volts(U1, U2, 240.0);
    let upper = work.volts(UEa, UEb, 0.0);
    let other = work.volts(U1, U4, if stuck_over { 0.0 } else { 240.0 });
    work.volts(LEa, LEb, if stuck_over { 240.0 } else { 0.0 });
    let amps = work.amps(Wire::LowerSwitched, if stuck_over { 18.75 } else { 0.0 });
    let cold = work.tap();
    assert!(cold < 105.0, "{cold} °F: a cold top, so that it ought to call");
    let cold = work.step() - 1;
    work.make_dead(&[U1, U2, U4]);
    work.finds(&[across, upper, other, amps, cold]);
    work.fits(PartKind::UpperThermostat);
    work.proves(18.75);
    work.acts(hand_over());
    work
}

pub fn perfect() -> Work {
    worked(false)
}

#[test]
fn the_right_part_cures() {
    perfect().cured();
    worked(true).cured();
}

#[test]
fn the_upper_element_does_not() {
    assert_in_vain(&order(FaultId::F11, &[("blade", 0.0)]));
}
