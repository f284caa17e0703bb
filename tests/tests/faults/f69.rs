//! The directory is wrong, and the wrong breaker is off.
//! Trade sheet, section 9, F69: common practice, no source.

use bench::{Action, Shown, Writing};
use drill::Order;
use plant::Screw::*;
use plant::fault::FaultId;
use plant::{Circuit, Handle, Level};

use crate::in_vain::*;
use crate::technician::*;
use crate::work::*;

fn mislabelled() -> Order {
    order(FaultId::F69, &[])
}

/// The breaker labelled for the heater is on, and the heater is dead on every leg.
fn found(work: &mut Work) -> [u32; 3] {
    work.opens_up();
    let none = work.volts(H1, H3, 0.0);
    let leg = work.volts(H1, Shell, 0.0);
    let Shown::Directory { labels } = work.act(Action::Read { what: Writing::Directory }).shown else {
        panic!("no directory")
    };
    let named = labels.iter().position(|(label, _)| *label == Circuit::Heater).unwrap();
    assert_ne!(named as u32, work.slot());
    let breakers = &work.session.home.plant.panel.breakers;
    assert_eq!(breakers[named].handle, Handle::On);
    [none, leg, work.step()]
}

pub fn perfect() -> Work {
    let mut work = Work::at(&mislabelled());
    let evidence = found(&mut work);
    work.make_dead(&[UEa, UEb, LEa, LEb]);
    let [upper, lower] = work.elements_clear();
    work.finds(&[evidence[0], evidence[1], evidence[2], upper, lower]);
    let slot = work.slot();
    work.act(Action::Relabel { slot, feeds: Circuit::Heater });
    let range = work.session.home.plant.panel.slot_of(Circuit::Range).unwrap() as u32;
    work.act(Action::Relabel { slot: range, feeds: Circuit::Range });
    work.proves(18.75);
    work.acts(hand_over());
    work
}

#[test]
fn the_right_breaker_and_the_truth_cure() {
    perfect().cured();
}

/// Locked by its label, the heater is dead only because its own breaker happens to be off: nothing is proved.
#[test]
fn the_labelled_breaker_locks_nothing() {
    let mut work = Work::at(&mislabelled());
    found(&mut work);
    let range = work.session.home.plant.panel.slot_of(Circuit::Range).unwrap() as u32;
    work.acts([Action::Breaker { slot: range, on: false }, Action::Lock { slot: range, on: true }]);
    work.acts(prove_ground());
    work.acts(prove_dead(&[]));
    assert!(work.session.me.proved_dead.is_none());
}

/// The breaker closed and the label left: the next one is misled again.
#[test]
fn the_label_left_is_no_cure() {
    let mut work = Work::at(&mislabelled());
    found(&mut work);
    let slot = work.slot();
    work.acts(close(Level::Lower));
    work.acts(close(Level::Upper));
    work.act(Action::Breaker { slot, on: true });
    work.acts(hand_over());
    assert!(!work.verdict().cure.is_right());
}

#[test]
fn a_limit_does_not() {
    assert_in_vain(&mislabelled());
}
