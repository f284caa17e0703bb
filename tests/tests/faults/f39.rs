//! Mixing valve seized too cold.
//! Trade sheet, section 9, F39: common practice, no source.

use bench::{Action, Probe};
use plant::Tap;
use plant::fault::{FaultId, PartKind};

use crate::in_vain::*;
use crate::work::*;

const NUMBERS: &[(&str, f64)] = &[("hot", 0.5)];

/// Hot at the nipple, lukewarm at two taps, and nothing crosses over.
pub fn perfect() -> Work {
    let mut work = Work::at(&order(FaultId::F39, NUMBERS));
    work.act(Action::TellHousehold);
    work.act(Action::Tap { tap: Tap::Kitchen, opening: 1.0 });
    work.act(Action::Wait { minutes: 2.0 });
    let nipple = work.degrees(Probe::HotPipe);
    let hot = work.step();
    let tap = work.degrees(Probe::Tap { tap: Tap::Kitchen });
    let lukewarm = work.step();
    assert!(nipple > 110.0 && tap < 103.0, "{nipple} °F at the nipple, {tap} °F at the tap");
    work.act(Action::ColdValve { opening: 0.0 });
    work.act(Action::Wait { minutes: 2.0 });
    let dry = work.step();
    work.finds(&[hot, lukewarm, dry]);
    work.fits(PartKind::MixingValve);
    work.act(Action::ColdValve { opening: 1.0 });
    work.act(Action::Wait { minutes: 2.0 });
    let tap = work.degrees(Probe::Tap { tap: Tap::Kitchen });
    assert!(tap > 108.0, "{tap}");
    work.act(Action::Tap { tap: Tap::Kitchen, opening: 0.0 });
    work.acts([Action::TellResult, Action::HandOver]);
    work
}

#[test]
fn the_right_part_cures() {
    perfect().cured();
}

#[test]
fn a_thermostat_does_not() {
    assert_in_vain(&order(FaultId::F39, NUMBERS));
}
