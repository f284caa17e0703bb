//! Sediment and a crusted lower element.
//! Trade sheet, section 9, F41: common practice, no source; popping while it works, grit at the drain, ohms good (2.1,
//! computed).

use bench::{Action, Sight};
use plant::Screw::*;
use plant::fault::{FaultId, PartKind};
use plant::{Level, Place, Wire};

use crate::in_vain::*;
use crate::technician::*;
use crate::work::*;

const CRUSTED: [(&str, f64); 2] = [("litres", 2.0), ("crust", 2.0)];

/// It pops while the lower element works and at no other time; its coil is good; the drain runs grey.
pub fn perfect() -> Work {
    let mut work = Work::at(&order(FaultId::F41, &CRUSTED));
    work.opens_up();
    work.act(Action::WaitForCutOut);
    assert!(!work.hears(Place::LowerCompartment).contains(&Sight::Popping), "at rest");
    work.draw(20.0);
    work.until(Wire::LowerSwitched, 18.75);
    work.act(Action::Wait { minutes: 2.0 });
    let flows = work.amps(Wire::LowerSwitched, 18.75);
    assert!(work.hears(Place::LowerCompartment).contains(&Sight::Popping));
    let pops = work.step();
    work.make_dead(&[LEa, LEb]);
    work.acts(lift_element(Level::Lower));
    let good = work.ohms(LEa, LEb, 12.54, 0.1);
    work.acts([Action::Hose { on: true }, Action::Drain { opening: 1.0 }]);
    assert!(work.look(Place::Drain).contains(&Sight::Grit));
    let grey = work.step();
    work.finds(&[flows, pops, good, grey]);
    work.flushes();
    work.acts([Action::Drain { opening: 0.0 }, Action::Hose { on: false }]);
    work.fits_drained(PartKind::LowerElement);
    work.ohms(LEa, LEb, 12.54, 0.1);
    work.insulated(LEa, Shell);
    work.acts(land_element(Level::Lower));
    work.proves(18.75);
    work.acts(hand_over());
    work
}

#[test]
fn flushed_and_with_a_new_element_it_is_quiet() {
    perfect().cured();
}

/// Flushed alone it pops on: the crust is on the element.
#[test]
fn a_flush_alone_leaves_the_crust() {
    let mut work = Work::at(&order(FaultId::F41, &CRUSTED));
    work.acts([Action::Hose { on: true }, Action::Drain { opening: 1.0 }]);
    work.flushes();
    let left = work.session.home.inspect();
    assert_eq!(left, [plant::fault::Defect::ElementCrusted(Level::Lower)]);
}

#[test]
fn a_thermostat_does_not() {
    assert_in_vain(&order(FaultId::F41, &CRUSTED));
}
