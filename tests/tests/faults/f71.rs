//! Hot joint beside the limit.
//! Trade sheet, section 9, F71: common practice, no source; drop computed as ohms times amperes.

use bench::{Action, Sight};
use plant::Screw::*;
use plant::fault::FaultId;
use plant::{Level, Place, Wire};

use crate::in_vain::*;
use crate::technician::*;
use crate::work::*;

const NUMBERS: [(&str, f64); 2] = [("leg", 0.0), ("ohms", 0.09)];

/// The limit opens with the tank at ordinary temperature; the screw beside it is brown and drops volts.
pub fn perfect() -> Work {
    let mut work = Work::at(&order(FaultId::F71, &NUMBERS));
    let at = end(Wire::FeedA, H1);
    work.opens_up();
    let seen = work.look(Place::UpperCompartment);
    assert!(seen.contains(&Sight::Button { proud: true }), "{seen:?}");
    assert!(seen.contains(&Sight::Charred { end: at }), "{seen:?}");
    let charred = work.step();
    work.make_dead(&[UEa, UEb, LEa, LEb, H1]);
    let [upper, lower] = work.elements_clear();
    work.reset_limit();
    work.runs();
    work.acts(open(Level::Upper));
    work.until(Wire::FeedA, 18.6);
    let dropped = work.volts(at, H1, 1.68);
    work.acts(close(Level::Upper));
    work.until(Wire::FeedA, 0.0);
    let tap = work.tap();
    assert!(tap < 140.0, "{tap} °F at the trip");
    let cool = work.step() - 1;
    work.acts(open(Level::Upper));
    assert!(work.look(Place::UpperCompartment).contains(&Sight::Button { proud: true }));
    let again = work.step();
    work.make_dead(&[H1]);
    work.finds(&[charred, upper, lower, dropped, cool, again]);
    work.act(Action::Remake { end: at, torqued: true });
    work.reset_limit();
    work.draw(10.0);
    work.acts(open(Level::Lower));
    work.proves(18.75);
    work.acts(hand_over());
    work
}

#[test]
fn the_joint_made_again_cures() {
    perfect().cured();
}

#[test]
fn a_new_limit_does_not() {
    assert_in_vain(&order(FaultId::F71, &NUMBERS));
}
