//! Both poles of the breaker on the same leg.
//! Trade sheet, section 9, F28: common practice, no source; unlike row E1 of 1.6 it stays with the wires lifted (computed).

use bench::{Action, Helper, Licence};
use drill::Order;
use plant::Screw::*;
use plant::fault::FaultId;
use plant::{Level, Wire};

use crate::in_vain::*;
use crate::technician::*;
use crate::work::*;

fn same_leg(licence: Licence) -> Order {
    Order { licence, ..order(FaultId::F28, &[("stab", 0.0)]) }
}

/// 120 V from each to ground, nothing between, and the same with the heater's wire off: no back-feed.
fn found(work: &mut Work) -> [u32; 2] {
    work.opens_up();
    let between = work.volts(H1, H3, 0.0);
    work.volts(H1, Shell, 120.0);
    work.volts(H3, Shell, 120.0);
    work.act(open_panel());
    work.volts(M1, M2, 240.0);
    work.volts(B1, B2, 0.0);
    work.volts(M1, B1, 0.0);
    let other = work.volts(M2, B2, 240.0);
    [between, other]
}

pub fn perfect() -> Work {
    let mut work = Work::at(&same_leg(Licence::Electrician));
    let evidence = found(&mut work);
    let slot = work.slot();
    let seen = work.look(plant::Place::LoadCenter);
    assert!(seen.contains(&bench::Sight::OneLeg { slot }), "{seen:?}");
    let looked = work.step();
    work.make_dead(&[]);
    work.acts(prove_breaker_dead());
    work.finds(&[evidence[0], evidence[1], looked]);
    work.act(Action::MoveBreaker { slot });
    work.act(close_panel());
    work.proves(18.75);
    work.acts(hand_over());
    work
}

#[test]
fn another_space_cures() {
    perfect().cured();
}

/// What tells it from one dead pole: with its wire lifted the second load screw is as live as before.
#[test]
fn no_back_feed_about_it() {
    let mut work = Work::at(&same_leg(Licence::Electrician));
    found(&mut work);
    work.make_dead(&[]);
    work.acts(prove_breaker_dead());
    let slot = work.slot();
    for end in [end(Wire::CableA, B1), end(Wire::CableB, B2)] {
        work.acts([Action::Label { end }, Action::Lift { end }]);
    }
    work.acts(energise(slot));
    work.volts(B1, G, 120.0);
    work.volts(B2, G, 120.0);
    work.volts(B1, B2, 0.0);
}

#[test]
fn a_plumber_locks_off_and_calls_an_electrician() {
    let mut work = Work::at(&same_leg(Licence::Plumber));
    let evidence = found(&mut work);
    work.make_dead(&[]);
    work.finds(&evidence);
    work.act(close_panel());
    work.acts(close(Level::Lower));
    work.acts(close(Level::Upper));
    work.acts([close_box(), Action::TellResult, Action::StopAndCall { whom: Helper::Electrician }]);
    work.handed_on(Helper::Electrician);
}

#[test]
fn an_element_does_not() {
    assert_in_vain(&same_leg(Licence::Electrician));
}
