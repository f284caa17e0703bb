//! Dials set high.
//! Trade sheet, section 9, F35: common practice, no source; tap above 130 °F.

use bench::{Action, Shown, Writing};
use plant::fault::{Advice, FaultId};
use plant::{Level, Wire};

use crate::in_vain::*;
use crate::technician::*;
use crate::work::*;

pub fn perfect() -> Work {
    let mut work = Work::at(&order(FaultId::F35, &[("dial", 145.0)]));
    work.acts(arrive());
    work.amps(Wire::FeedA, 0.0);
    let hot = work.tap();
    assert!(hot > 130.0, "{hot} °F at the tap");
    let tapped = work.step() - 1;
    work.acts(open(Level::Upper));
    work.acts(open(Level::Lower));
    let dials = work.act(Action::Read { what: Writing::Dials }).shown;
    let Shown::Dials { upper, lower } = dials else { panic!("{dials:?}") };
    near(&"dial", upper.to_fahrenheit(), 145.0, 0.1);
    near(&"dial", lower.to_fahrenheit(), 145.0, 0.1);
    let read = work.step();
    work.make_dead(&[]);
    work.finds(&[tapped, read]);
    work.acts(set_dials());
    work.act(Action::Advise { advice: Advice::SafeTemperature });
    work.draw(36.0);
    work.proves(18.75);
    work.acts(hand_over());
    let after = work.session.home.plant.outlet().to_fahrenheit();
    assert!(after < 130.0, "{after} °F");
    work
}

#[test]
fn dials_at_120_cure() {
    perfect().cured();
}

#[test]
fn a_limit_does_not() {
    assert_in_vain(&order(FaultId::F35, &[("dial", 145.0)]));
}
