//! Breaker switched off or tripped, no fault behind it.
//! Trade sheet, section 9, F18: common practice, no source; 0 V everywhere, 18.75 A of 2.1 (computed).

use bench::Sight;
use plant::Screw::*;
use plant::fault::FaultId;
use plant::{Handle, Level, Place};

use crate::in_vain::*;
use crate::technician::*;
use crate::work::*;

/// No volts anywhere; the elements are clear; closed once, it runs to its cut-out.
fn worked(tripped: f64) -> Work {
    let mut work = Work::at(&order(FaultId::F18, &[("tripped", tripped)]));
    let handle = if tripped > 0.5 { Handle::Tripped } else { Handle::Off };
    let slot = work.slot();
    let seen = work.look(Place::LoadCenter);
    assert!(seen.contains(&Sight::BreakerHandle { slot, handle, locked: false }), "{seen:?}");
    let found = work.step();
    work.opens_up();
    work.look(Place::UpperCompartment);
    let flat = work.step();
    // Nor is either compartment wet.
    work.look(Place::LowerCompartment);
    let dry = work.step();
    work.volts(H1, H3, 0.0);
    work.ghost(H1, Shell);
    work.ghost(H3, Shell);
    work.make_dead(&[UEa, UEb, LEa, LEb]);
    let [upper, lower] = [Level::Upper, Level::Lower].map(|level| {
        let [a, b] = screws(level);
        work.acts(lift_element(level));
        let steps = [work.ohms(a, b, 12.54, 0.1), work.insulated(a, Shell)];
        work.acts(land_element(level));
        steps
    });
    work.proves(18.75);
    let idle = work.step();
    // Nothing tripped it again in a whole heating.
    let seen = work.look(Place::LoadCenter);
    assert!(seen.contains(&Sight::BreakerHandle { slot, handle: Handle::On, locked: false }), "{seen:?}");
    // And it is the one that the directory names.
    work.act(bench::Action::Read { what: bench::Writing::Directory });
    work.finds(&[&[found, flat, dry], &upper[..], &lower, &[idle - 1, idle, idle + 1, idle + 2]].concat());
    work.acts(hand_over());
    work
}

pub fn perfect() -> Work {
    worked(1.0)
}

#[test]
fn the_handle_cures() {
    perfect().cured();
    worked(0.0).cured();
}

#[test]
fn a_limit_does_not() {
    assert_in_vain(&order(FaultId::F18, &[("tripped", 0.0)]));
}
