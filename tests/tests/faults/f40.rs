//! Hot and cold connections swapped.
//! Trade sheet, section 9, F40: common practice, no source.

use bench::{Action, Probe};
use plant::Tap;
use plant::fault::{FaultId, PartKind};

use crate::in_vain::*;
use crate::technician::*;
use crate::work::*;

const NUMBERS: &[(&str, f64)] = &[];

/// With a tap running the nipple marked hot goes cold and the one marked cold hot.
pub fn perfect() -> Work {
    let mut work = Work::at(&order(FaultId::F40, NUMBERS));
    work.opens_up();
    work.act(Action::Tap { tap: Tap::Kitchen, opening: 1.0 });
    work.act(Action::Wait { minutes: 2.0 });
    let marked_hot = work.degrees(Probe::HotPipe);
    let first = work.step();
    let marked_cold = work.degrees(Probe::ColdPipe);
    let second = work.step();
    assert!(marked_cold > marked_hot + 20.0, "{marked_hot} °F marked hot, {marked_cold} °F marked cold");
    work.act(Action::Tap { tap: Tap::Kitchen, opening: 0.0 });
    work.make_dead(&[]);
    work.finds(&[first, second]);
    work.acts(drain().into_iter().take(4));
    work.act(Action::Wait { minutes: 5.0 });
    work.fits(PartKind::Connections);
    work.acts(refill());
    work.proves(18.75);
    work.act(Action::Tap { tap: Tap::Kitchen, opening: 1.0 });
    work.act(Action::Wait { minutes: 4.0 });
    let (hot, cold) = (work.degrees(Probe::HotPipe), work.degrees(Probe::ColdPipe));
    assert!(hot > cold + 10.0, "{hot} {cold}");
    work.act(Action::Tap { tap: Tap::Kitchen, opening: 0.0 });
    work.acts(hand_over());
    work
}

#[test]
fn each_on_its_own_nipple_cures() {
    perfect().cured();
}

#[test]
fn an_element_does_not() {
    assert_in_vain(&order(FaultId::F40, NUMBERS));
}
