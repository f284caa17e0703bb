//! Thermal expansion in a closed system: the relief valve weeps by night.
//! Trade sheet, section 9, F45: common practice, no source; 135 psi and more after a heat-up, expansion tank of 5.7 (computed).

use bench::{Action, Helper, Licence, Observation, Sight};
use drill::{Detail, Order, RuleId};
use plant::fault::{FaultId, PartKind};
use plant::{Place, Tap, Wire};
use quantity::Volume;

use crate::in_vain::*;
use crate::technician::*;
use crate::work::*;

fn closed(licence: Licence) -> Order {
    Order { licence, ..order(FaultId::F45, &[("psi", 65.0)]) }
}

/// Static pressure is ordinary; after a heat-up without a draw the lazy hand stands near the relief valve's
/// setting, and an open tap brings it down at once.
fn found(work: &mut Work) -> [u32; 2] {
    work.acts(arrive());
    let seen = work.look(Place::HeaterTop);
    assert!(seen.contains(&Sight::CheckValve { there: true }), "{seen:?}");
    assert!(seen.contains(&Sight::ExpansionTank { there: false }), "{seen:?}");
    let looked = work.step();
    work.act(Action::Gauge { on: true });
    work.draw(15.0);
    let (resting, _) = work.gauge();
    near(&"static psi", resting, 65.0, 6.0);
    work.acts([Action::Gauge { on: false }, Action::Gauge { on: true }, Action::WaitForCutOut]);
    let (now, highest) = work.gauge();
    assert!(highest >= 135.0, "{highest} psi after the heat-up");
    let peak = work.step();
    work.act(Action::Bucket { tap: Tap::Kitchen, volume: Volume::gallons(0.5) });
    let (after, _) = work.gauge();
    assert!(after < 80.0 && now > 100.0, "{now} psi, {after} psi with a tap opened");
    work.act(Action::Gauge { on: false });
    [looked, peak]
}

pub fn perfect() -> Work {
    let mut work = Work::at(&closed(Licence::Plumber));
    let evidence = found(&mut work);
    work.finds(&evidence);
    let slot = work.slot();
    work.acts([Action::Breaker { slot, on: false }, Action::Lock { slot, on: true }]);
    work.acts([Action::ColdValve { opening: 0.0 }, Action::Tap { tap: Tap::Laundry, opening: 1.0 }]);
    work.fits(PartKind::ExpansionTank);
    work.acts([
        Action::ColdValve { opening: 1.0 },
        Action::Wait { minutes: 3.0 },
        Action::Tap { tap: Tap::Laundry, opening: 0.0 },
        Action::Look { at: Place::HeaterTop },
    ]);
    work.draw(15.0);
    work.act(Action::Gauge { on: true });
    work.acts(energise(slot));
    work.amps(Wire::FeedA, 18.75);
    work.act(Action::WaitForCutOut);
    work.amps(Wire::FeedA, 0.0);
    let (_, highest) = work.gauge();
    assert!(highest < 110.0, "{highest} psi with an expansion tank");
    work.act(Action::Gauge { on: false });
    work.acts(hand_over());
    work
}

#[test]
fn an_expansion_tank_cures() {
    perfect().cured();
}

#[test]
fn an_electrician_calls_a_plumber() {
    let mut work = Work::at(&closed(Licence::Electrician));
    let evidence = found(&mut work);
    work.finds(&evidence);
    work.acts([close_box(), Action::TellResult, Action::StopAndCall { whom: Helper::Plumber }]);
    work.handed_on(Helper::Plumber);
}

#[test]
fn a_relief_valve_does_not() {
    assert_in_vain(&closed(Licence::Plumber));
}

/// What was reported as wrong beside the fault, and not told though it lay before the eyes.
fn untold(work: &Work) -> bool {
    let detail = Detail::Observed { what: Observation::NoExpansionControl };
    let lines = work.verdict().score.lines;
    lines.iter().any(|l| l.rule == RuleId::HazardUnreported && l.detail == detail && l.points > 0.0)
}

/// Seen and neither found, mended nor told, it costs; whoever never looked is not asked.
#[test]
fn no_room_for_expansion_has_to_be_told() {
    let mut work = Work::at(&closed(Licence::Plumber));
    assert!(!untold(&work), "nobody has looked");
    work.look(Place::HeaterTop);
    work.finds_the(FaultId::F47, &[1]);
    assert!(untold(&work));
    let mut found = Work { drill: work.drill.clone(), session: work.session.clone() };
    work.act(Action::Report { what: Observation::NoExpansionControl });
    assert!(!untold(&work), "reported");
    found.finds_the(FaultId::F45, &[1]);
    assert!(!untold(&found), "written down as the fault");
    let mut open = Work::at(&order(FaultId::F47, &[]));
    open.look(Place::HeaterTop);
    assert!(!untold(&open), "not closed");
}
