//! An element grounded near one end of its coil.
//! Trade sheet, section 9, F14: common practice, no source; resistances computed from the place along 12.8 Ω.

use bench::Sight;
use plant::Screw::*;
use plant::fault::{FaultId, PartKind};
use plant::{Handle, Level, Place};

use crate::technician::*;
use crate::work::*;

const PERMANENT: [(&str, f64); 4] = [("level", 1.0), ("end", 1.0), ("depth", 0.03), ("ohms", 0.05)];
const SWITCHED: [(&str, f64); 4] = [("level", 0.0), ("end", 0.0), ("depth", 0.05), ("ohms", 0.05)];

/// Nothing is energised before the elements are tested: one screw reads next to nothing to the sheath, the
/// other nearly the whole coil.
fn worked(numbers: &[(&str, f64)], level: Level) -> Work {
    let mut work = Work::at(&order(FaultId::F14, numbers));
    let tripped = work.handle() == Handle::Tripped;
    work.opens_up();
    work.volts(H1, H3, if tripped { 0.0 } else { 240.0 });
    work.make_dead(&[UEa, UEb, LEa, LEb]);
    let [a, b] = screws(level);
    let (near_end, far_end) = if level == Level::Lower { (b, a) } else { (a, b) };
    let depth = numbers[2].1 * 12.8;
    work.acts(lift_element(level));
    let whole = work.ohms(a, b, 12.8, 0.1);
    let short = work.ohms(near_end, Shell, depth + 0.05, 0.1);
    let long = work.ohms(far_end, Shell, 12.8 - depth + 0.05, 0.1);
    work.finds(&[whole, short, long]);
    let kind = if level == Level::Lower { PartKind::LowerElement } else { PartKind::UpperElement };
    work.fits_drained(kind);
    work.ohms(a, b, 12.8, 0.1);
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
    worked(&PERMANENT, Level::Lower)
}

#[test]
fn the_right_part_cures() {
    let work = perfect();
    assert_eq!(
        work.drill.job.home.plant.panel.feeding(plant::Circuit::Heater).unwrap().handle,
        Handle::Tripped
    );
    work.cured();
    worked(&SWITCHED, Level::Upper).cured();
}

/// At the permanent end the new breaker trips too, with every thermostat satisfied or not (12, case 12: in
/// seconds; beyond ten times its rating at once).
#[test]
fn a_breaker_does_not() {
    let work = assert_in_vain(&order(FaultId::F14, &PERMANENT));
    assert_eq!(work.handle(), Handle::Tripped);
}
