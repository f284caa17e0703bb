//! One fuse of the switch in the line has melted.
//! Trade sheet, section 9, F21: common practice, no source; readings of row E1 of 1.6 (computed).

use bench::{Action, Cover, Display, Helper, Licence, Shown, Sight};
use drill::Order;
use plant::Screw::*;
use plant::fault::{FaultId, PartKind};
use plant::{BoxKind, Level, Place, Stab};

use crate::in_vain::*;
use crate::technician::*;
use crate::work::*;

fn melted(licence: Licence) -> Order {
    Order { licence, ..order(FaultId::F21, &[("leg-of-fuse", 0.0)]) }
}

fn door(off: bool) -> Action {
    Action::Cover { which: Cover::BoxDoor, off }
}

/// Row E1 at the heater; in the box 240 V on the line side, none on the load side, and 240 V across the melted fuse.
fn found(work: &mut Work) -> [u32; 2] {
    work.opens_up();
    work.volts(H1, H3, 0.0);
    work.volts(H1, Shell, 120.0);
    work.volts(H3, Shell, 120.0);
    let seen = work.look(Place::InLineBox);
    let face = Sight::Box { kind: BoxKind::FusedSwitch, closed: Some(true), locked: false };
    assert_eq!(seen, [face]);
    work.act(door(true));
    work.volts(X1, X2, 240.0);
    let load = work.volts(X3, X4, 0.0);
    let across = work.volts(X1, X3, 240.0);
    work.volts(X2, X4, 0.0);
    [load, across]
}

fn through(work: &mut Work, leg: Stab) -> Display {
    work.act(Action::PullFuse { leg, out: true });
    match work.act(Action::TestFuse { leg }).shown {
        Shown::Meter { display } => display,
        other => panic!("{other:?}"),
    }
}

pub fn perfect() -> Work {
    let mut work = Work::at(&melted(Licence::Electrician));
    let evidence = found(&mut work);
    work.make_dead(&[X1, X2, X3, X4]);
    assert_eq!(through(&mut work, Stab::One), Display::Over);
    assert!(matches!(through(&mut work, Stab::Two), Display::Ohms { ohms } if ohms.get() < 0.2));
    work.finds(&evidence);
    work.fits(PartKind::Fuse);
    work.act(door(false));
    work.proves(18.75);
    work.acts(hand_over());
    work
}

#[test]
fn fuses_cure() {
    perfect().cured();
}

/// An open switch with one's own lock and tag isolates as well as the breaker does (6.5, published); unlocked it proves
/// nothing, and what stands before it stays live.
#[test]
fn the_switch_is_the_point_of_isolation() {
    let mut work = Work::at(&melted(Licence::Plumber));
    let evidence = found(&mut work);
    work.act(Action::BoxHandle { closed: false });
    work.acts(prove_ground());
    work.acts(prove_dead(&[]));
    assert!(work.session.me.proved_dead.is_none(), "no lock");
    work.act(Action::BoxLock { on: true });
    let shown = work.session.step(&Action::BoxHandle { closed: true }).shown;
    assert_eq!(shown, Shown::Refused { why: bench::Refusal::Locked });
    work.acts(prove_dead(&[]));
    assert!(work.session.me.proved_dead.is_some(), "locked, tagged, tested");
    work.volts(X1, X2, 240.0);
    work.finds(&evidence);
    work.act(door(false));
    work.acts(close(Level::Lower));
    work.acts(close(Level::Upper));
    work.acts([close_box(), Action::TellResult, Action::StopAndCall { whom: Helper::Electrician }]);
    work.handed_on(Helper::Electrician);
}

/// Fuses of another rating are no remedy: they melt, or protect nothing.
#[test]
fn fuses_of_another_rating_are_charged() {
    let mut work = Work::at(&melted(Licence::Electrician));
    found(&mut work);
    work.make_dead(&[X1, X2, X3, X4]);
    let part = bench::NewPart::Fuse { rating: quantity::Amps(60.0) };
    work.act(Action::Replace { part });
    assert!(work.verdict().lost(drill::RuleId::WrongRating) > 0.0);
}

#[test]
fn a_thermostat_does_not() {
    assert_in_vain(&melted(Licence::Plumber));
}
