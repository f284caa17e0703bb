//! Relief valve's seat fouled.
//! Trade sheet, section 9, F47: common practice, no source.

use bench::{Action, Fitting, Sight};
use plant::Place;
use plant::fault::{FaultId, PartKind};

use crate::in_vain::*;
use crate::technician::*;
use crate::work::*;

const NUMBERS: &[(&str, f64)] = &[("diameter", 0.0002)];

/// It weeps far below its setting, and two flushes of the lever do not help.
pub fn perfect() -> Work {
    let mut work = Work::at(&order(FaultId::F47, NUMBERS));
    work.opens_up();
    assert!(drips(&mut work));
    let weeps = work.step();
    work.act(Action::Gauge { on: true });
    work.draw(5.0);
    let (now, _) = work.gauge();
    assert!(now < 80.0, "{now} psi");
    let quiet = work.step();
    work.act(Action::Gauge { on: false });
    for _ in 0..2 {
        work.acts([Action::ReliefLever { up: true }, Action::ReliefLever { up: false }]);
    }
    work.acts([Action::Wipe { fitting: Fitting::ReliefValve }, Action::Wait { minutes: 10.0 }]);
    assert!(drips(&mut work));
    let still = work.step();
    work.make_dead(&[]);
    work.finds(&[weeps, quiet, still]);
    work.fits_drained(PartKind::ReliefValve);
    work.act(Action::Wipe { fitting: Fitting::ReliefValve });
    work.act(Action::Wait { minutes: 10.0 });
    assert!(!drips(&mut work));
    work.proves(18.75);
    work.acts(hand_over());
    work
}

fn drips(work: &mut Work) -> bool {
    let seen = work.look(Place::Relief);
    seen.contains(&Sight::Wet { fitting: Fitting::ReliefValve, dripping: true })
}

#[test]
fn the_right_part_cures() {
    perfect().cured();
}

#[test]
fn an_expansion_tank_does_not() {
    assert_in_vain(&order(FaultId::F47, NUMBERS));
}
