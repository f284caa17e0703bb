//! Turns of a coil shorted.
//! Trade sheet, section 9, F15: common practice, no source; ohms as the share of 12.54 Ω (12.8 Ω, 2 % less cold).

use bench::{Action, Shown, Sight, Writing};
use plant::Screw::*;
use plant::fault::{FaultId, PartKind};
use plant::{Level, Place, Wire};

use crate::in_vain::*;
use crate::technician::*;
use crate::work::*;

const LOWER: [(&str, f64); 2] = [("level", 1.0), ("share", 0.55)];

/// The stamp agrees with the plate and the coil does not.
pub fn perfect() -> Work {
    let mut work = Work::at(&order(FaultId::F15, &LOWER));
    work.opens_up();
    work.make_dead(&[UEa, UEb, LEa, LEb]);
    work.acts(lift_element(Level::Lower));
    let stamp = work.act(Action::Read { what: Writing::StampLower }).shown;
    let Shown::Stamp { rating, .. } = stamp else { panic!("{stamp:?}") };
    near(&"stamped watts", rating.watts.get(), 4500.0, 0.1);
    let ohms = work.ohms(LEa, LEb, 12.54 * 0.55, 0.2);
    work.insulated(LEa, Shell);
    work.finds(&[ohms]);
    work.fits_drained(PartKind::LowerElement);
    work.ohms(LEa, LEb, 12.54, 0.1);
    work.acts(land_element(Level::Lower));
    work.proves(18.75);
    work.acts(hand_over());
    work
}

#[test]
fn the_right_part_cures() {
    perfect().cured();
}

/// 34 A is within the 40 A that a limit is made for (trade sheet 1.5): it stays in while the water is no hotter than the
/// dial asks for, or who finds it open would change a sound limit.
#[test]
fn its_current_leaves_the_limit_alone() {
    let mut work = Work::at(&order(FaultId::F15, &LOWER));
    let is_out =
        |work: &mut Work| work.look(Place::UpperCompartment).contains(&Sight::Button { proud: true });
    work.opens_up();
    assert!(!is_out(&mut work));
    work.make_dead(&[UEa, UEb, LEa, LEb]);
    work.runs();
    work.draws(20.0);
    work.until(Wire::FeedB, 33.5);
    work.act(Action::Wait { minutes: 60.0 });
    assert!(work.tap() < 140.0);
    work.acts(open(Level::Upper));
    assert!(!is_out(&mut work));
}

#[test]
fn a_breaker_does_not() {
    assert_in_vain(&order(FaultId::F15, &LOWER));
}
