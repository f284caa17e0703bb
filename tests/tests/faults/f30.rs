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
    // Twice the current is within the 40 A that a limit is made for.
    assert!(seen.contains(&Sight::Button { proud: false }), "{seen:?}");
    work.make_dead(&[U2, U4]);
    work.runs();
    work.draws(20.0);
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

/// As much as one upper control and its screws are not made for, and less than the limit is (trade sheet 1.5): the tank is
/// heated to its dial.
#[test]
fn both_at_once_leave_the_limit_in() {
    let mut work = Work::at(&order(FaultId::F30, &[]));
    work.opens_up();
    work.make_dead(&[]);
    work.runs();
    work.draws(20.0);
    work.until(Wire::FeedA, 36.7);
    work.until(Wire::FeedA, 0.0);
    work.acts(open(Level::Upper));
    assert!(work.look(Place::UpperCompartment).contains(&Sight::Button { proud: false }));
}

#[test]
fn a_breaker_does_not() {
    assert_in_vain(&order(FaultId::F30, &[]));
}
