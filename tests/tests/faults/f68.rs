//! Wires of U2 and U4 swapped.
//! Trade sheet, section 9, F68: common practice, no source; the reverse of rows A and B of 1.6 (computed).

use bench::{Action, Sight};
use plant::Screw::*;
use plant::fault::FaultId;
use plant::{End, Place, Wire};

use crate::in_vain::*;
use crate::technician::*;
use crate::work::*;

const UPPER: End = End { wire: Wire::UpperSwitched, side: 0 };
const LOWER: End = End { wire: Wire::Transfer, side: 0 };

/// The limit has opened; two wires sit on each other's screw.
pub fn perfect() -> Work {
    let mut work = Work::at(&order(FaultId::F68, &[]));
    work.opens_up();
    let seen = work.look(Place::UpperCompartment);
    assert!(seen.contains(&Sight::Crossed { end: UPPER, on: U4 }), "{seen:?}");
    assert!(seen.contains(&Sight::Crossed { end: LOWER, on: U2 }), "{seen:?}");
    let crossed = work.step();
    work.make_dead(&[U2, U4, UEa, UEb, LEa, LEb]);
    work.elements_clear();
    work.finds(&[crossed]);
    for (end, screw) in [(UPPER, U2), (LOWER, U4)] {
        work.acts([Action::Label { end }, Action::Lift { end }]);
        assert_eq!(end.home(), screw);
    }
    for end in [UPPER, LOWER] {
        work.act(Action::Land { end, screw: end.home(), torqued: true });
    }
    if seen.contains(&Sight::Button { proud: true }) {
        work.reset_limit();
    }
    work.draw(36.0);
    work.proves(18.75);
    work.acts(hand_over());
    work
}

#[test]
fn each_on_its_own_screw_cures() {
    perfect().cured();
}

/// Cold on top: the lower element has the volts, the upper none.
#[test]
fn the_cold_top_feeds_the_lower_element() {
    let mut work = Work::at(&order(FaultId::F68, &[]));
    work.opens_up();
    if work.look(Place::UpperCompartment).contains(&Sight::Button { proud: true }) {
        work.make_dead(&[]);
        work.reset_limit();
        let slot = work.slot();
        work.acts(energise_open(slot));
    }
    work.draw(36.0);
    work.volts(U1, U2, 0.0);
    work.volts(LEa, LEb, 240.0);
    work.volts(UEa, UEb, 0.0);
}

fn energise_open(slot: u32) -> [Action; 2] {
    [Action::Lock { slot, on: false }, Action::Breaker { slot, on: true }]
}

#[test]
fn a_limit_does_not() {
    assert_in_vain(&order(FaultId::F68, &[]));
}
