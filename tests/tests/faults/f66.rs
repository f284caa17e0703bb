//! A 240 V heater fed with 120 V.
//! Trade sheet, section 9, F66: common practice, no source; check case 4 (2.4, published by a repair forum): 1125 W, 9.38 A.

use bench::{Action, Helper, Licence, Sight};
use drill::Order;
use plant::Screw::*;
use plant::fault::FaultId;
use plant::{Place, Wire};

use crate::in_vain::*;
use crate::technician::*;
use crate::work::*;

fn on_one_leg(licence: Licence) -> Order {
    Order { licence, ..order(FaultId::F66, &[]) }
}

fn found(work: &mut Work) -> [u32; 3] {
    work.opens_up();
    work.draw(25.0);
    let across = work.volts(H1, H3, 120.0);
    work.volts(H1, Shell, 120.0);
    let low = work.between(H3, Shell, 0.0, 1.0);
    let amps = work.amps(Wire::FeedA, 9.35);
    [across, low, amps]
}

pub fn perfect() -> Work {
    let mut work = Work::at(&on_one_leg(Licence::Electrician));
    let [across, low, amps] = found(&mut work);
    work.act(open_panel());
    let white = end(Wire::CableB, B2);
    let seen = work.look(Place::LoadCenter);
    assert!(seen.contains(&Sight::Crossed { end: white, on: N }), "{seen:?}");
    let looked = work.step();
    work.make_dead(&[]);
    work.acts(prove_breaker_dead());
    work.finds(&[across, low, amps, looked]);
    work.acts([Action::Label { end: white }, Action::Lift { end: white }]);
    work.act(Action::Land { end: white, screw: B2, torqued: true });
    work.act(close_panel());
    work.proves(18.75);
    work.acts(hand_over());
    work
}

#[test]
fn the_white_wire_on_its_pole_cures() {
    perfect().cured();
}

#[test]
fn a_plumber_locks_off_and_calls_an_electrician() {
    let mut work = Work::at(&on_one_leg(Licence::Plumber));
    let evidence = found(&mut work);
    work.hands_on(&evidence, Helper::Electrician);
}

#[test]
fn an_element_does_not() {
    assert_in_vain(&on_one_leg(Licence::Electrician));
}
