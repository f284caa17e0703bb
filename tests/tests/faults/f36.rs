//! Dials far apart.
//! Trade sheet, section 9, F36: common practice, no source; dials as set.

use bench::{Action, Shown, Writing};
use plant::fault::FaultId;

use crate::in_vain::*;
use crate::technician::*;
use crate::work::*;

const UPPER_LOW: [(&str, f64); 3] = [("level", 0.0), ("low", 92.0), ("high", 125.0)];
const LOWER_LOW: [(&str, f64); 3] = [("level", 1.0), ("low", 92.0), ("high", 125.0)];

fn worked(numbers: &[(&str, f64)], expected: [f64; 2]) -> Work {
    let mut work = Work::at(&order(FaultId::F36, numbers));
    work.opens_up();
    let dials = work.act(Action::Read { what: Writing::Dials }).shown;
    let Shown::Dials { upper, lower } = dials else { panic!("{dials:?}") };
    near(&"upper dial", upper.to_fahrenheit(), expected[0], 0.1);
    near(&"lower dial", lower.to_fahrenheit(), expected[1], 0.1);
    let read = work.step();
    work.make_dead(&[]);
    work.finds(&[read]);
    work.acts(set_dials());
    work.draw(36.0);
    work.proves(18.75);
    work.acts(hand_over());
    work
}

pub fn perfect() -> Work {
    worked(&LOWER_LOW, [125.0, 92.0])
}

#[test]
fn dials_alike_cure() {
    perfect().cured();
    worked(&UPPER_LOW, [92.0, 125.0]).cured();
}

#[test]
fn an_element_does_not() {
    assert_in_vain(&order(FaultId::F36, &LOWER_LOW));
}
