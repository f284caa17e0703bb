//! Lower control fed from U2 instead of U4.
//! Trade sheet, section 9, F30: common practice, no source; 37.5 A is twice 18.75 A of 2.1 (computed), 36.7 A with
//! the drop of its own branch.

use bench::{Action, Sight};
use plant::Screw::*;
use plant::fault::FaultId;
use plant::{End, Level, Place, Wire};

use crate::in_vain::*;
use crate::technician::*;
use crate::work::*;

const WRONG: End = End { wire: Wire::Transfer, side: 0 };

/// Cold, both elements run at once, and the wire is seen where it does not belong.
pub fn perfect() -> Work {
    let mut work = Work::at(&order(FaultId::F30, &[]));
    work.opens_up();
    let seen = work.look(Place::UpperCompartment);
    assert!(seen.contains(&Sight::Crossed { end: WRONG, on: U2 }), "{seen:?}");
    let crossed = work.step();
    // Twice the current warms the limit open.
    assert!(seen.contains(&Sight::Button { proud: true }), "{seen:?}");
    work.make_dead(&[U2, U4]);
    work.reset_limit();
    work.runs();
    let both = work.amps(Wire::FeedA, 36.7);
    work.acts(open(Level::Upper));
    work.acts(open(Level::Lower));
    work.volts(U1, U2, 0.0);
    let lower = work.volts(LEa, LEb, 235.0);
    work.make_dead(&[U2, U4]);
    work.finds(&[crossed, both, lower]);
    work.acts([
        Action::Label { end: WRONG },
        Action::Lift { end: WRONG },
        Action::Land { end: WRONG, screw: U4, torqued: true },
    ]);
    work.proves(18.75);
    work.acts(hand_over());
    work
}

#[test]
fn the_wire_on_its_own_screw_cures() {
    perfect().cured();
}

/// Twice the current of the contacts' rating: the limit beside them opens before the water is hot.
#[test]
fn both_at_once_open_the_limit() {
    let mut work = Work::at(&order(FaultId::F30, &[]));
    work.opens_up();
    work.make_dead(&[]);
    work.reset_limit();
    work.runs();
    work.until(Wire::FeedA, 0.0);
    let tap = work.tap();
    assert!((90.0..135.0).contains(&tap), "{tap}");
    work.acts(open(Level::Upper));
    assert!(work.look(Place::UpperCompartment).contains(&Sight::Button { proud: true }));
}

#[test]
fn a_breaker_does_not() {
    assert_in_vain(&order(FaultId::F30, &[]));
}
