//! Dials set low.
//! Trade sheet, section 9, F34: common practice, no source; dials as set.

use bench::{Action, Shown, Writing};
use plant::Wire;
use plant::fault::FaultId;

use crate::in_vain::*;
use crate::technician::*;
use crate::work::*;

const LOW: [(&str, f64); 1] = [("dial", 95.0)];

/// Satisfied and lukewarm: the water is what the dials say.
pub fn perfect() -> Work {
    let mut work = Work::at(&order(FaultId::F34, &LOW));
    work.opens_up();
    work.until(Wire::FeedA, 0.0);
    let idle = work.step();
    let tap = work.tap();
    near(&"water at the tap, °F", tap, 95.0, 12.0);
    let lukewarm = work.step() - 1;
    let dials = work.act(Action::Read { what: Writing::Dials }).shown;
    let Shown::Dials { upper, lower } = dials else { panic!("{dials:?}") };
    near(&"upper dial", upper.to_fahrenheit(), 95.0, 0.1);
    near(&"lower dial", lower.to_fahrenheit(), 95.0, 0.1);
    let read = work.step();
    work.make_dead(&[]);
    work.finds(&[idle, lukewarm, read]);
    work.acts(set_dials());
    work.draw(36.0);
    work.proves(18.75);
    work.acts(hand_over());
    work
}

#[test]
fn dials_at_120_cure() {
    perfect().cured();
}

#[test]
fn a_thermostat_does_not() {
    assert_in_vain(&order(FaultId::F34, &LOW));
}
