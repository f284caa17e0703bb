//! An element grounded near one end of its coil.
//! Trade sheet, section 9, F14: common practice, no source; resistances computed from the place along 12.54 Ω (12.8 Ω, 2 % less cold).

use bench::Sight;
use drill::Order;
use plant::Screw::*;
use plant::fault::{FaultId, PartKind};
use plant::{Circuit, Handle, Level, Place};

use crate::in_vain::*;
use crate::technician::*;
use crate::work::*;

const DEPTH: f64 = 0.03;
const OHMS: f64 = 0.05;

/// At which element, and which end of it.
type Spot = (Level, bool);
const PERMANENT: Spot = (Level::Lower, true);

fn grounded((level, permanent): Spot) -> Order {
    let level = if level == Level::Lower { 1.0 } else { 0.0 };
    let end = if permanent { 1.0 } else { 0.0 };
    order(FaultId::F14, &[("level", level), ("end", end), ("depth", DEPTH), ("ohms", OHMS)])
}

/// Nothing is energised before the elements are tested: one screw reads next to nothing to the sheath, the
/// other nearly the whole coil.
fn worked(spot: Spot) -> Work {
    let (level, permanent) = spot;
    let mut work = Work::at(&grounded(spot));
    let tripped = work.handle() == Handle::Tripped;
    work.opens_up();
    work.volts(H1, H3, if tripped { 0.0 } else { 240.0 });
    work.make_dead(&[UEa, UEb, LEa, LEb]);
    let [a, b] = screws(level);
    let (near_end, far_end) = if permanent { (b, a) } else { (a, b) };
    let depth = DEPTH * 12.54;
    work.acts(lift_element(level));
    let whole = work.ohms(a, b, 12.54, 0.1);
    let short = work.ohms(near_end, Shell, depth + OHMS, 0.1);
    let long = work.ohms(far_end, Shell, 12.54 - depth + OHMS, 0.1);
    work.finds(&[whole, short, long]);
    let kind = if level == Level::Lower { PartKind::LowerElement } else { PartKind::UpperElement };
    work.fits_drained(kind);
    work.ohms(a, b, 12.54, 0.1);
    work.insulated(a, Shell);
    work.acts(land_element(level));
    if work.look(Place::UpperCompartment).contains(&Sight::Button { proud: true }) {
        work.reset_limit();
    }
    work.proves(18.75);
    work.acts(hand_over());
    work
}

pub fn perfect() -> Work {
    worked(PERMANENT)
}

#[test]
fn the_right_part_cures() {
    let found = |work: &Work| work.drill.job.home.plant.panel.feeding(Circuit::Heater).unwrap().handle;
    for spot in [PERMANENT, (Level::Upper, true)] {
        let work = worked(spot);
        assert_eq!(found(&work), Handle::Tripped, "permanent end: it trips satisfied or not");
        work.cured();
    }
    for level in [Level::Upper, Level::Lower] {
        worked((level, false)).cured();
    }
}

/// At the permanent end the new breaker trips too, with every thermostat satisfied or not (12, case 12: in
/// seconds; beyond ten times its rating at once).
#[test]
fn a_breaker_does_not() {
    let work = assert_in_vain(&grounded(PERMANENT));
    assert_eq!(work.handle(), Handle::Tripped);
}
