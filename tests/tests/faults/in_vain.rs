//! The part commonly changed in error, changed with all the care of a proper job.

use bench::{Action, MeterFunction};
use drill::{Cure, Drill, Order, RuleId};
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
    let hot_neutral = work.session.home.plant.wiring.hot_neutral;
    // 120 gallons take longer to run off than the 80 that the sequences wait for.
    let large = work.session.home.plant.plate.nominal > quantity::Volume::gallons(80.1);
    let longer = |mut acts: Vec<Action>| {
        for act in &mut acts {
            if let Action::Wait { minutes } = act
                && large
                && *minutes >= 30.0
            {
                *minutes *= 2.0;
            }
        }
        acts
    };
    work.acts(by_the_book::arrive());
    work.acts(by_the_book::open(Level::Upper));
    if lower {
        work.acts(by_the_book::open(Level::Lower));
    }
    work.act(by_the_book::read(MeterFunction::Volts, Screw::H1, Screw::Pipe));
    let there = |screw: &Screw| work.session.home.plant.wiring.has_screw(*screw);
    let screws: Vec<Screw> = by_the_book::handled(kind).iter().copied().filter(there).collect();
    work.make_dead(&screws);
    if kind == PartKind::Breaker {
        work.act(by_the_book::open_panel());
        work.acts(by_the_book::prove_breaker_dead_on(hot_neutral));
    }
    let opens = by_the_book::opens_tank(kind);
    if opens {
        work.acts(longer(by_the_book::drain()));
        work.drains_out();
    }
    // Water that comes from elsewhere, as through a fixture, may still spill: that is part of the error.
    work.forces(kind);
    if opens {
        work.acts(longer(by_the_book::refill_after(kind)));
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
    // What was not the fault may do its harm meanwhile: a loose joint burns on, a dial left low keeps it lukewarm.
    for last in [Action::TellResult, Action::HandOver] {
        work.session.step(&last);
    }
    let verdict = work.verdict();
    (work, verdict)
}

/// Whether this heater has the part that is commonly changed in error: one of a single element has no lower one.
pub fn has_what_tempts(drill: &Drill) -> bool {
    let handled = by_the_book::handled(drill.fault.id.fault().tempting);
    let wiring = &drill.job.home.plant.wiring;
    handled.is_empty() || handled.iter().any(|screw| wiring.has_screw(*screw))
}

/// The part commonly changed for a fault neither cures it nor goes unseen in the Repair account.
#[track_caller]
pub fn assert_in_vain(order: &Order) -> Work {
    let (work, verdict) = changed_in_error(order);
    assert!(matches!(verdict.cure, Cure::NotCured { .. }), "{:?}", verdict.cure);
    assert!(verdict.lost(RuleId::ChangedInVain) > 0.0, "{:#?}", verdict.score.lines);
    work
}

/// Another part serves as well, for more money than was needed.
#[track_caller]
pub fn assert_dear(order: &Order) -> Work {
    let (work, verdict) = changed_in_error(order);
    assert!(verdict.cure.is_right(), "{:?}", verdict.cure);
    assert!(verdict.lost(RuleId::ChangedInVain) > 0.0, "{:#?}", verdict.score.lines);
    work
}
