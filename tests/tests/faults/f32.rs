//! Wet compartment.
//! Trade sheet, section 9, F32: common practice, no source; wet behind the cover, ohms from a screw to the shell that rise
//! to megohms once it is dried.

use bench::{Action, Fitting, Sight};
use plant::Screw::*;
use plant::fault::{FaultId, PartKind};
use plant::{Level, Place};

use crate::in_vain::*;
use crate::technician::*;
use crate::work::*;

const LOWER: [(&str, f64); 3] = [("level", 1.0), ("diameter", 0.00015), ("ohms", 5.0)];

/// Wet and rusted; a few ohms from D1 to the shell with the element clear of it. Tight and dry it is megohms.
pub fn perfect() -> Work {
    let mut work = Work::at(&order(FaultId::F32, &LOWER));
    work.opens_up();
    let seen = work.look(Place::LowerCompartment);
    assert!(seen.contains(&Sight::Wet { fitting: Fitting::LowerElement, dripping: true }), "{seen:?}");
    let wet = work.step();
    // Element and track draw some 43 A through one pole of the limit, whose heat may open it before the breaker does.
    let limit = work.look(Place::UpperCompartment);
    work.make_dead(&[LEa, LEb, D1, D2]);
    let track = work.ohms(D1, Shell, 5.0, 0.5);
    work.acts(lift_element(Level::Lower));
    let clear = work.insulated(LEa, Shell);
    work.finds(&[wet, track, clear]);
    work.fits_drained(PartKind::LowerGasket);
    work.act(Action::Wipe { fitting: Fitting::LowerElement });
    work.over_or_kilohms(D1, Shell);
    work.acts(land_element(Level::Lower));
    if limit.contains(&Sight::Button { proud: true }) {
        work.reset_limit();
    }
    work.proves(18.75);
    work.acts(hand_over());
    work
}

#[test]
fn a_gasket_and_a_dry_compartment_cure() {
    perfect().cured();
}

/// A new gasket with the water left standing: the track conducts on.
#[test]
fn a_gasket_alone_does_not() {
    let mut work = Work::at(&order(FaultId::F32, &LOWER));
    work.opens_up();
    work.make_dead(&[LEa, LEb, D1, D2]);
    work.acts(lift_element(Level::Lower));
    work.fits_drained(PartKind::LowerGasket);
    work.ohms(D1, Shell, 5.0, 0.5);
}

#[test]
fn a_breaker_does_not() {
    assert_in_vain(&order(FaultId::F32, &LOWER));
}
