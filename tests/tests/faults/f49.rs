//! Expansion tank waterlogged.
//! Trade sheet, section 9, F49: common practice, no source.

use bench::{Action, Shown, Sight};
use plant::fault::{FaultId, PartKind};
use plant::{Place, Tap};

use crate::in_vain::*;
use crate::technician::*;
use crate::work::*;

const NUMBERS: &[(&str, f64)] = &[("psi", 65.0)];

/// There is a tank; its air valve gives water, and a heat-up drives the gauge past 135 psi.
pub fn perfect() -> Work {
    let mut work = Work::at(&order(FaultId::F49, NUMBERS));
    work.acts(arrive());
    let seen = work.look(Place::HeaterTop);
    assert!(seen.contains(&Sight::ExpansionTank { there: true }), "{seen:?}");
    let there = work.step();
    assert_eq!(work.act(Action::TankCharge).shown, Shown::Charge { air: None });
    let water = work.step();
    work.act(Action::Gauge { on: true });
    work.draw(15.0);
    let (resting, _) = work.gauge();
    near(&"static psi", resting, 65.0, 6.0);
    work.acts([Action::Gauge { on: false }, Action::Gauge { on: true }, Action::WaitForCutOut]);
    let (_, highest) = work.gauge();
    assert!(highest >= 135.0, "{highest} psi after the heat-up");
    let peak = work.step();
    work.act(Action::Gauge { on: false });
    work.finds(&[there, water, peak]);
    work.acts([Action::ColdValve { opening: 0.0 }, Action::Tap { tap: Tap::Laundry, opening: 1.0 }]);
    work.fits(PartKind::ExpansionTank);
    work.acts([
        Action::ColdValve { opening: 1.0 },
        Action::Wait { minutes: 3.0 },
        Action::Tap { tap: Tap::Laundry, opening: 0.0 },
        Action::Gauge { on: true },
    ]);
    work.draw(15.0);
    work.act(Action::WaitForCutOut);
    let (_, highest) = work.gauge();
    assert!(highest < 110.0, "{highest} psi with a sound one");
    work.act(Action::Gauge { on: false });
    work.acts(hand_over());
    work
}

#[test]
fn the_right_part_cures() {
    perfect().cured();
}

#[test]
fn a_relief_valve_does_not() {
    assert_in_vain(&order(FaultId::F49, NUMBERS));
}
