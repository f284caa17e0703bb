//! An aluminium cable in connectors for copper.
//! Trade sheet, section 9, F25: common practice, no source; NEC 110.14(A), published: aluminium only in connectors rated for it.

use bench::{Action, Helper, Licence, Sight};
use drill::Order;
use plant::Screw::*;
use plant::conductor::Metal;
use plant::fault::{FaultId, PartKind};
use plant::{Level, Place, Wire};

use crate::in_vain::*;
use crate::technician::*;
use crate::work::*;

fn aluminium(licence: Licence) -> Order {
    Order { licence, ..order(FaultId::F25, &[("leg-of-joint", 0.0), ("watts", 8.0)]) }
}

const SEEN: Sight = Sight::Cable { awg: 8, metal: Metal::Aluminium, rated: false };

/// Seen, and over half a volt across the joint under load: 8 W at first, and worse with every heating since.
fn found(work: &mut Work) -> [u32; 2] {
    work.acts(arrive());
    let seen = work.look(Place::JunctionBox);
    assert!(
        seen.contains(&SEEN) && seen.contains(&Sight::Charred { end: end(Wire::CableA, Ja) }),
        "{seen:?}"
    );
    let looked = work.step();
    work.draw(20.0);
    work.amps(Wire::FeedA, 18.6);
    let drop = work.between(end(Wire::CableA, Ja), Ja, 0.5, 2.0);
    work.acts(open(Level::Upper));
    work.acts(open(Level::Lower));
    [looked, drop]
}

pub fn perfect() -> Work {
    let mut work = Work::at(&aluminium(Licence::Electrician));
    let evidence = found(&mut work);
    work.make_dead(&[Ja, Jb]);
    work.finds(&evidence);
    work.fits(PartKind::Connectors);
    let seen = work.look(Place::JunctionBox);
    assert_eq!(seen, [Sight::Cable { awg: 8, metal: Metal::Aluminium, rated: true }]);
    work.proves(18.75);
    work.acts(hand_over());
    work
}

#[test]
fn rated_connectors_cure() {
    perfect().cured();
}

/// Made again in the same connector it is sound for a day, and begins to creep anew.
#[test]
fn the_same_connector_again_does_not() {
    let mut work = Work::at(&aluminium(Licence::Electrician));
    let evidence = found(&mut work);
    work.make_dead(&[Ja, Jb]);
    work.finds(&evidence);
    work.act(Action::Remake { end: end(Wire::CableA, Ja), torqued: true });
    work.proves(18.75);
    work.acts(hand_over());
    assert!(!work.verdict().cure.is_right());
}

#[test]
fn a_plumber_calls_an_electrician() {
    let mut work = Work::at(&aluminium(Licence::Plumber));
    let evidence = found(&mut work);
    work.hands_on(&evidence, Helper::Electrician);
}

#[test]
fn a_breaker_does_not() {
    assert_in_vain(&aluminium(Licence::Electrician));
}
