//! Burnt screw at the lower thermostat.
//! Trade sheet, section 9, F24: common practice, no source; drops computed as ohms times amperes.

use bench::{Action, Sight};
use plant::Screw::*;
use plant::fault::FaultId;
use plant::{Place, Wire};

use crate::in_vain::*;
use crate::technician::*;
use crate::work::*;

const HOT: [(&str, f64); 3] = [("leg", 0.0), ("open", 0.0), ("ohms", 0.09)];
const OFF: [(&str, f64); 3] = [("leg", 1.0), ("open", 1.0), ("ohms", 0.09)];

/// Browned, and volts across a joint that should have none.
fn worked(numbers: &[(&str, f64)], wire: Wire, screw: plant::Screw, drop: f64) -> Work {
    let mut work = Work::at(&order(FaultId::F24, numbers));
    let at = end(wire, screw);
    work.opens_up();
    let seen = work.look(Place::LowerCompartment);
    assert!(seen.contains(&Sight::Charred { end: at }), "{seen:?}");
    let charred = work.step();
    work.until(Wire::FeedA, 0.0);
    if drop < 100.0 {
        work.draw(8.0);
        work.until(Wire::LowerSwitched, 240.0 / (12.8 + 0.09));
    }
    let dropped = work.volts(at, screw, drop);
    work.make_dead(&[D1, D2]);
    work.finds(&[charred, dropped]);
    work.act(Action::Remake { end: at, torqued: true });
    work.proves(18.75);
    work.acts(hand_over());
    work
}

pub fn perfect() -> Work {
    worked(&HOT, Wire::Transfer, D1, 1.68)
}

#[test]
fn the_joint_made_again_cures() {
    perfect().cured();
    worked(&OFF, Wire::LowerSwitched, D2, 240.0).cured();
}

#[test]
fn an_element_does_not() {
    assert_in_vain(&order(FaultId::F24, &HOT));
}
