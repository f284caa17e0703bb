//! One pole of the breaker does not make.
//! Trade sheet, section 9, F19: common practice, no source; readings of row E1 of 1.6 (computed).

use bench::{Action, Helper, Licence};
use drill::Order;
use plant::Screw::*;
use plant::Wire;
use plant::fault::{FaultId, PartKind};

use crate::in_vain::*;
use crate::technician::*;
use crate::work::*;

fn half_dead(licence: Licence) -> Order {
    Order { licence, ..order(FaultId::F19, &[("pole", 0.0)]) }
}

/// Cold tank, upper element called: both line screws 120 V to ground, nothing between them.
fn found(work: &mut Work) -> [u32; 2] {
    work.opens_up();
    let between = work.volts(H1, H3, 0.0);
    work.volts(H1, Shell, 120.0);
    work.volts(H3, Shell, 120.0);
    work.volts(UEa, UEb, 0.0);
    [between, work.step()]
}

pub fn perfect() -> Work {
    let mut work = Work::at(&half_dead(Licence::Electrician));
    let [between, _] = found(&mut work);
    work.act(open_panel());
    work.volts(M1, M2, 240.0);
    work.volts(B1, B2, 0.0);
    let across = work.volts(M1, B1, 240.0);
    work.volts(M2, B2, 0.0);
    work.volts(B1, G, 120.0);
    work.volts(B2, G, 120.0);
    // Its poles sit on both legs: no breaker in the wrong space.
    let seen = work.look(plant::Place::LoadCenter);
    assert!(!seen.iter().any(|s| matches!(s, bench::Sight::OneLeg { .. })), "{seen:?}");
    let looked = work.step();
    work.make_dead(&[]);
    work.acts(prove_breaker_dead());
    work.finds(&[between, across, looked]);
    work.fits(PartKind::Breaker);
    work.act(close_panel());
    work.proves(18.75);
    work.acts(hand_over());
    work
}

#[test]
fn the_right_part_cures() {
    perfect().cured();
}

/// Back-feed: with the wire off the dead load screw it reads nothing.
#[test]
fn the_load_screw_is_dead_with_its_wire_off() {
    let mut work = Work::at(&half_dead(Licence::Electrician));
    found(&mut work);
    work.act(open_panel());
    work.volts(B1, G, 120.0);
    work.make_dead(&[]);
    work.acts(prove_breaker_dead());
    let slot = work.slot();
    let end = end(Wire::CableA, B1);
    work.acts([Action::Label { end }, Action::Lift { end }]);
    work.acts(energise(slot));
    work.ghost(B1, G);
    work.volts(B2, G, 120.0);
}

#[test]
fn a_plumber_locks_off_and_calls_an_electrician() {
    let mut work = Work::at(&half_dead(Licence::Plumber));
    let evidence = found(&mut work);
    work.hands_on(&evidence, Helper::Electrician);
}

#[test]
fn an_element_does_not() {
    assert_in_vain(&half_dead(Licence::Electrician));
}
