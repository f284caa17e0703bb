//! Limit that trips far below its rating.
//! Trade sheet, section 9, F07: common practice, no source; below 150 °F at the trip, both legs idle.

use bench::Sight;
use plant::Screw::*;
use plant::fault::{FaultId, PartKind};
use plant::{Level, Place, Wire};

use crate::in_vain::*;
use crate::technician::*;
use crate::work::*;

const NUMBERS: [(&str, f64); 1] = [("trip", 118.0)];

/// Reset, it opens again before the water has reached the dial, its screws clean and both elements clear.
pub fn perfect() -> Work {
    let mut work = Work::at(&order(FaultId::F07, &NUMBERS));
    work.opens_up();
    let seen = work.look(Place::UpperCompartment);
    assert!(seen.contains(&Sight::Button { proud: true }), "{seen:?}");
    assert!(!seen.iter().any(|s| matches!(s, Sight::Charred { .. })), "{seen:?}");
    let clean = work.step();
    work.make_dead(&[UEa, UEb, LEa, LEb]);
    let [upper, lower] = work.elements_clear();
    work.reset_limit();
    work.runs();
    let rated = work.amps(Wire::FeedA, 18.75);
    work.until(Wire::FeedA, 0.0);
    let idle = work.step();
    let tap = work.tap();
    assert!(tap < 130.0, "{tap} °F at the trip");
    let cool = work.step() - 1;
    work.acts(open(Level::Upper));
    work.acts(open(Level::Lower));
    assert!(work.look(Place::UpperCompartment).contains(&Sight::Button { proud: true }));
    let again = work.step();
    let in_ = work.volts(H1, H3, 240.0);
    let out = work.ghost(H2, H4);
    work.make_dead(&[H1, H2, H3, H4]);
    work.finds(&[clean, upper, lower, rated, idle, cool, again, in_, out]);
    work.fits(PartKind::Limit);
    work.draw(20.0);
    work.proves(18.75);
    near(&"water at the tap, °F", work.tap(), 120.0, 8.0);
    work.acts(hand_over());
    work
}

#[test]
fn a_new_limit_cures() {
    perfect().cured();
}

#[test]
fn an_element_does_not() {
    assert_in_vain(&order(FaultId::F07, &NUMBERS));
}
