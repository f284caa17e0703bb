//! The breaker trips under an ordinary load: tired, or warmed by a hot lug.
//! Trade sheet, section 9, F20: common practice, no source; drops computed as watts over amperes.

use bench::{Action, Helper, Licence, Noticed, Sight};
use drill::Order;
use plant::Screw::*;
use plant::fault::{FaultId, PartKind};
use plant::{Handle, Level, Place, Wire};

use crate::in_vain::*;
use crate::technician::*;
use crate::work::*;

fn tired(licence: Licence) -> Order {
    Order { licence, ..order(FaultId::F20, &[("lug", 0.0), ("ease", 1.35), ("watts", 24.0)]) }
}

fn hot_lug() -> Order {
    let numbers = [("lug", 1.0), ("ease", 1.45), ("watts", 24.0)];
    Order { licence: Licence::Electrician, ..order(FaultId::F20, &numbers) }
}

/// On again, where it was found tripped, with cold water in the tank.
fn runs_cold(work: &mut Work) {
    let slot = work.slot();
    if work.handle() == Handle::Tripped {
        work.act(Action::Breaker { slot, on: false });
    }
    if work.handle() == Handle::On {
        work.act(Action::Breaker { slot, on: false });
    }
    work.draw(20.0);
    work.act(Action::Breaker { slot, on: true });
}

/// Waits until it trips, its legs carrying no more than they should. Gives the minutes.
fn trips(work: &mut Work) -> f64 {
    let began = work.session.clock;
    for _ in 0..20 {
        let outcome = work.act(Action::Wait { minutes: 2.0 });
        if outcome.noticed.iter().any(|n| matches!(n, Noticed::BreakerTripped { .. })) {
            return (work.session.clock - began).to_minutes();
        }
    }
    panic!("never tripped")
}

/// Both legs carry 18.7 A and one pole drops 8 W / 18.7 A = 0.43 V, its twin 0.09 V: half a volt apart on any meter.
fn found(work: &mut Work) -> [u32; 4] {
    work.acts(arrive());
    work.act(open_panel());
    runs_cold(work);
    let first = work.amps(Wire::CableA, 18.7);
    let second = work.amps(Wire::CableB, 18.7);
    let worn = work.between(M1, B1, 0.35, 0.52);
    work.between(M2, B2, 0.05, 0.15);
    let minutes = trips(work);
    assert!((4.0..30.0).contains(&minutes), "tripped after {minutes} minutes");
    let slot = work.slot();
    let seen = work.look(Place::LoadCenter);
    assert!(
        seen.contains(&Sight::BreakerHandle { slot, handle: Handle::Tripped, locked: false }),
        "{seen:?}"
    );
    [first, second, worn, work.step()]
}

pub fn perfect() -> Work {
    let mut work = Work::at(&tired(Licence::Electrician));
    let evidence = found(&mut work);
    work.acts(open(Level::Upper));
    work.acts(open(Level::Lower));
    work.make_dead(&[UEa, UEb, LEa, LEb]);
    work.acts(prove_breaker_dead());
    let [upper, lower] = work.elements_clear();
    work.finds(&[evidence[0], evidence[1], evidence[2], evidence[3], upper, lower]);
    work.fits(PartKind::Breaker);
    work.act(close_panel());
    work.proves(18.75);
    assert_eq!(work.handle(), Handle::On);
    work.acts(hand_over());
    work
}

#[test]
fn another_breaker_cures() {
    perfect().cured();
}

/// A lug that takes 24 W at 18.7 A drops 1.3 V, is seen charred, and warms its pole until that trips.
#[test]
fn the_lug_made_again_cures() {
    let mut work = Work::at(&hot_lug());
    work.acts(arrive());
    work.act(open_panel());
    let lug = end(Wire::CableA, B1);
    let seen = work.look(Place::LoadCenter);
    assert!(seen.contains(&Sight::Charred { end: lug }), "{seen:?}");
    let charred = work.step();
    runs_cold(&mut work);
    let amps = work.amps(Wire::CableA, 18.6);
    let drop = work.between(lug, B1, 1.15, 1.4);
    work.between(M1, B1, 0.05, 0.15);
    let minutes = trips(&mut work);
    assert!((5.0..40.0).contains(&minutes), "tripped after {minutes} minutes");
    work.acts(open(Level::Upper));
    work.acts(open(Level::Lower));
    work.make_dead(&[UEa, UEb, LEa, LEb]);
    work.acts(prove_breaker_dead());
    work.finds(&[charred, amps, drop]);
    work.act(Action::Remake { end: lug, torqued: true });
    work.act(close_panel());
    work.proves(18.75);
    assert_eq!(work.handle(), Handle::On);
    work.acts(hand_over());
    work.cured();
}

#[test]
fn a_plumber_locks_off_and_calls_an_electrician() {
    let mut work = Work::at(&tired(Licence::Plumber));
    let evidence = found(&mut work);
    work.make_dead_outside();
    work.finds(&evidence);
    work.act(close_panel());
    work.acts([close_box(), Action::TellResult, Action::StopAndCall { whom: Helper::Electrician }]);
    work.handed_on(Helper::Electrician);
}

#[test]
fn an_element_does_not() {
    assert_in_vain(&tired(Licence::Electrician));
}
