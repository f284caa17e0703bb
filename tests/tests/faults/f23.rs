//! Burnt splice in the junction box.
//! Trade sheet, section 9, F23: common practice, no source; drops computed as ohms times amperes.

use bench::{Action, Shown, Sight};
use plant::Screw::{self, Ja, Jb};
use plant::fault::FaultId;
use plant::{Level, Place, Wire};

use crate::in_vain::*;
use crate::technician::*;
use crate::work::*;

const HOT: [(&str, f64); 3] = [("leg", 0.0), ("open", 0.0), ("ohms", 0.09)];
const OFF: [(&str, f64); 3] = [("leg", 1.0), ("open", 1.0), ("ohms", 0.09)];

/// Smelled, seen, and measured across the joint while an element runs: volts where there should be none.
fn worked(numbers: &[(&str, f64)], wire: Wire, splice: Screw, drop: f64) -> Work {
    let mut work = Work::at(&order(FaultId::F23, numbers));
    let at = end(wire, splice);
    let smelled = work.act(Action::Smell { at: Place::JunctionBox }).shown;
    assert!(matches!(&smelled, Shown::Sights { sights, .. } if sights.contains(&Sight::BurntSmell)));
    work.acts(arrive());
    let seen = work.look(Place::JunctionBox);
    assert!(seen.contains(&Sight::Charred { end: at }), "{seen:?}");
    let charred = work.step();
    if drop < 100.0 {
        work.draw(20.0);
        work.amps(Wire::FeedA, 240.0 / (12.8 + 0.09));
    }
    let dropped = work.volts(at, splice, drop);
    work.volts(end(Wire::CableA, Ja), end(Wire::CableB, Jb), 240.0);
    work.volts(Ja, Jb, (240.0 - drop).abs());
    work.acts(open(Level::Upper));
    work.acts(open(Level::Lower));
    work.make_dead(&[Ja, Jb]);
    work.finds(&[charred, dropped]);
    work.act(Action::Remake { end: at, torqued: true });
    work.proves(18.75);
    work.acts(hand_over());
    work
}

pub fn perfect() -> Work {
    worked(&HOT, Wire::CableA, Ja, 1.68)
}

#[test]
fn the_joint_made_again_cures() {
    perfect().cured();
    worked(&OFF, Wire::CableB, Jb, 240.0).cured();
}

#[test]
fn a_thermostat_does_not() {
    assert_in_vain(&order(FaultId::F23, &HOT));
}
