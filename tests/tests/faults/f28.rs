//! Both poles of the breaker on the same leg.
//! Trade sheet, section 9, F28: common practice, no source; unlike row E1 of 1.6 it stays with the wires lifted (computed).

use bench::{Action, Helper, Licence};
use drill::Order;
use plant::Screw::*;
use plant::fault::{FaultId, PartKind};
use plant::{Level, Wire};

use crate::in_vain::*;
use crate::technician::*;
use crate::work::*;

fn same_leg(licence: Licence) -> Order {
    Order { licence, ..order(FaultId::F28, &[("stab", 0.0), ("tandem", 0.0)]) }
}

fn tandem(licence: Licence) -> Order {
    Order { licence, ..order(FaultId::F28, &[("stab", 0.0), ("tandem", 1.0)]) }
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
    assert!(!seen.contains(&bench::Sight::Tandem { slot }), "{seen:?}");
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

/// A tandem's two handles are seen from in front, and that both halves are on one leg once the front is off. What cures is a
/// two-pole breaker in its place.
fn with_a_tandem(shift: bool) -> Work {
    let mut work = Work::at(&tandem(Licence::Electrician));
    let slot = work.slot();
    let seen = work.look(plant::Place::LoadCenter);
    assert!(seen.contains(&bench::Sight::Tandem { slot }), "{seen:?}");
    assert!(!seen.contains(&bench::Sight::OneLeg { slot }), "{seen:?}");
    let front = work.step();
    let evidence = found(&mut work);
    let seen = work.look(plant::Place::LoadCenter);
    assert!(seen.contains(&bench::Sight::OneLeg { slot }), "{seen:?}");
    work.make_dead(&[]);
    work.acts(prove_breaker_dead());
    work.finds(&[evidence[0], evidence[1], front]);
    if shift {
        // On the other leg, with both halves: as dead as before.
        work.act(Action::MoveBreaker { slot });
        let stabs = work.session.home.plant.panel.breakers[slot as usize].stabs;
        assert_eq!(stabs, [Some(plant::Stab::Two); 2]);
    } else {
        work.fits(PartKind::Breaker);
    }
    work
}

#[test]
fn a_two_pole_breaker_in_a_tandems_place_cures() {
    let mut work = with_a_tandem(false);
    work.act(close_panel());
    work.proves(18.75);
    work.acts(hand_over());
    work.cured();
}

#[test]
fn a_tandem_is_on_one_leg_in_any_space() {
    let mut work = with_a_tandem(true);
    let slot = work.slot();
    work.acts(energise(slot));
    work.volts(B1, G, 120.0);
    work.volts(B2, G, 120.0);
    work.volts(B1, B2, 0.0);
    work.volts(M1, B1, 240.0);
    work.volts(M2, B2, 0.0);
}

/// What tells it from one dead pole: with its wire lifted the second load screw is as live as before.
#[test]
fn no_back_feed_about_it() {
    [same_leg, tandem].iter().for_each(|of| no_back_feed(&of(Licence::Electrician)));
}

fn no_back_feed(order: &Order) {
    let mut work = Work::at(order);
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
    assert_in_vain(&tandem(Licence::Electrician));
}
