//! The timer in the line keeps the heater off.
//! Trade sheet, section 9, F26: common practice, no source; volts upstream, none downstream.

use bench::{Action, Cover, Licence, Sight};
use drill::Order;
use plant::Screw::*;
use plant::fault::{FaultId, PartKind};
use plant::{BoxKind, Place};

use crate::in_vain::*;
use crate::technician::*;
use crate::work::*;

fn timer(clock: f64) -> Order {
    let numbers = [("clock", clock), ("hours", 11.0)];
    Order { licence: Licence::Electrician, ..order(FaultId::F26, &numbers) }
}

fn door(off: bool) -> Action {
    Action::Cover { which: Cover::BoxDoor, off }
}

/// The box with its door off: lever, what the clock shows, the true time of day.
fn seen(work: &mut Work) -> (Option<bool>, f64, f64) {
    let sights = work.look(Place::InLineBox);
    let [Sight::Box { kind: BoxKind::Timer, closed, .. }, Sight::BoxHours { shows, .. }] = sights[..] else {
        panic!("{sights:?}")
    };
    let now = (work.drill.job.starts_at + work.session.clock).get() % 86_400.0;
    (closed, shows.get(), now)
}

pub fn perfect() -> Work {
    let mut work = Work::at(&timer(0.0));
    work.opens_up();
    let none = work.ghost(H1, H3);
    work.ghost(H1, Shell);
    work.act(door(true));
    let (closed, shows, now) = seen(&mut work);
    assert!(closed == Some(true) && (shows - now).abs() < 1.0, "its clock says on and is right");
    let line = work.volts(X1, X2, 240.0);
    let load = work.ghost(X3, X4);
    work.make_dead(&[X1, X2, X3, X4]);
    work.finds(&[none, line, load]);
    work.fits(PartKind::TimeSwitch);
    work.act(door(false));
    work.proves(18.75);
    work.acts(hand_over());
    work
}

#[test]
fn another_timer_cures() {
    perfect().cured();
}

/// Eleven hours slow: off from eight in the morning until four.
#[test]
fn a_clock_set_right_cures() {
    let mut work = Work::at(&timer(1.0));
    work.acts(arrive());
    work.act(door(true));
    let (closed, shows, now) = seen(&mut work);
    assert!((now - shows - 11.0 * 3600.0).abs() < 1.0);
    assert_eq!(closed, Some(false), "{} h", now / 3600.0);
    let looked = work.step();
    work.volts(X1, X2, 240.0);
    let load = work.ghost(X3, X4);
    work.finds(&[looked, load]);
    work.act(Action::SetClock);
    let (closed, shows, now) = seen(&mut work);
    assert!(closed == Some(true) && (shows - now).abs() < 1.0);
    work.act(door(false));
    work.draw(20.0);
    work.amps(plant::Wire::FeedA, 18.75);
    work.act(Action::WaitForCutOut);
    work.amps(plant::Wire::FeedA, 0.0);
    work.acts(hand_over());
    work.cured();
}

/// A lever moved by hand holds until the hours move it back: it proves the wires behind it, and cures nothing.
#[test]
fn the_lever_is_no_cure() {
    let mut work = Work::at(&timer(1.0));
    work.acts(arrive());
    work.act(door(true));
    work.act(Action::BoxHandle { closed: true });
    work.volts(X3, X4, 240.0);
    let lock = work.session.step(&Action::BoxLock { on: true }).shown;
    assert_eq!(lock, bench::Shown::Refused { why: bench::Refusal::NoHasp }, "a control is no isolation");
    work.act(door(false));
    work.acts(hand_over());
    assert!(!work.verdict().cure.is_right());
}

#[test]
fn an_element_does_not() {
    assert_in_vain(&timer(0.0));
}
