//! The part commonly changed in error, changed with all the care of a proper job.

use bench::{Action, MeterFunction};
use drill::{Cure, Order, RuleId};
use plant::fault::{FaultId, PartKind};
use plant::{Handle, Level, Screw};

use crate::technician as by_the_book;
use crate::work::{Verdict, Work};

/// The whole job done with care and the wrong part: dead, drained where it must be, changed, refilled, the
/// breaker as it was found. Everything else stays as found.
pub fn changed_in_error(order: &Order) -> (Work, Verdict) {
    let mut work = Work::at(order);
    let kind = work.drill.fault.id.fault().tempting;
    let found = work.handle();
    let lower = work.session.home.plant.plate.has(Level::Lower);
    work.acts(by_the_book::arrive());
    work.acts(by_the_book::open(Level::Upper));
    if lower {
        work.acts(by_the_book::open(Level::Lower));
    }
    work.act(by_the_book::read(MeterFunction::Volts, Screw::H1, Screw::Pipe));
    work.make_dead(by_the_book::handled(kind));
    if kind == PartKind::Breaker {
        work.act(by_the_book::open_panel());
        work.acts(by_the_book::prove_breaker_dead());
    }
    let opens = by_the_book::opens_tank(kind);
    if opens {
        work.acts(by_the_book::drain());
    }
    // Water that comes from elsewhere, as through a fixture, may still spill: that is part of the error.
    work.forces(kind);
    if opens {
        work.acts(by_the_book::refill());
    }
    if kind == PartKind::Breaker {
        work.act(by_the_book::close_panel());
    }
    if lower {
        work.acts(by_the_book::close(Level::Lower));
    }
    work.acts(by_the_book::close(Level::Upper));
    let slot = work.slot();
    work.act(Action::Lock { slot, on: false });
    // Closing a breaker that was found open for no fault is the remedy itself.
    if found != Handle::Off && work.drill.fault.id != FaultId::F18 {
        work.act(Action::Breaker { slot, on: true });
    }
    work.act(by_the_book::close_box());
    work.act(Action::TellResult);
    // Handing over may do its own harm: a dial left low keeps the tank lukewarm.
    work.session.step(&Action::HandOver);
    let verdict = work.verdict();
    (work, verdict)
}

/// The part commonly changed for a fault neither cures it nor goes unseen in the Repair account.
#[track_caller]
pub fn assert_in_vain(order: &Order) -> Work {
    let (work, verdict) = changed_in_error(order);
    assert!(matches!(verdict.cure, Cure::NotCured { .. }), "{:?}", verdict.cure);
    assert!(verdict.lost(RuleId::ChangedInVain) > 0.0, "{:#?}", verdict.score.lines);
    work
}
