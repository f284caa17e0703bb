//! A hot pipe ticking in its straps.
//! Trade sheet, section 9, F57: common practice, no source; ticking at the start and the end of a draw, whether or not an
//! element works.

use bench::{Action, Sight};
use plant::fault::{FaultId, PartKind};
use plant::{Place, Tap, Wire};

use crate::in_vain::*;
use crate::technician::*;
use crate::work::*;

const STRAPPED: [(&str, f64); 1] = [("metres", 4.0)];

/// It ticks when hot water runs, with no current in either leg, and never with the taps shut.
pub fn perfect() -> Work {
    let mut work = Work::at(&order(FaultId::F57, &STRAPPED));
    work.acts(arrive());
    work.act(Action::WaitForCutOut);
    let idle = work.amps(Wire::FeedA, 0.0);
    assert!(!work.hears(Place::HeaterTop).contains(&Sight::Ticking));
    work.act(Action::Tap { tap: Tap::Kitchen, opening: 1.0 });
    assert!(work.hears(Place::HeaterTop).contains(&Sight::Ticking));
    let ticks = work.step();
    work.act(Action::Tap { tap: Tap::Kitchen, opening: 0.0 });
    work.finds(&[idle, ticks]);
    work.fits(PartKind::PipeClips);
    work.act(Action::Tap { tap: Tap::Kitchen, opening: 1.0 });
    assert!(!work.hears(Place::HeaterTop).contains(&Sight::Ticking));
    work.act(Action::Tap { tap: Tap::Kitchen, opening: 0.0 });
    work.acts(hand_over());
    work
}

#[test]
fn the_right_part_cures() {
    perfect().cured();
}

#[test]
fn an_element_does_not() {
    assert_in_vain(&order(FaultId::F57, &STRAPPED));
}
