//! Pressure regulator holds nothing back.
//! Trade sheet, section 9, F46: common practice, no source.
//! 80 psi: 5.7, published.

use bench::Action;
use plant::Tap;
use plant::fault::{FaultId, PartKind};

use crate::in_vain::*;
use crate::work::*;

const NUMBERS: &[(&str, f64)] = &[("psi", 120.0)];

/// Far above 80 psi with nothing heating and nothing drawn.
pub fn perfect() -> Work {
    let mut work = mended();
    work.acts([Action::TellResult, Action::HandOver]);
    work
}

/// Up to what the customer is told.
fn mended() -> Work {
    let mut work = Work::at(&order(FaultId::F46, NUMBERS));
    work.act(Action::TellHousehold);
    work.act(Action::Gauge { on: true });
    work.draw(5.0);
    let (now, _) = work.gauge();
    near(&"static psi", now, 120.0, 8.0);
    let high = work.step();
    work.finds(&[high]);
    work.act(Action::ColdValve { opening: 0.0 });
    work.act(Action::Tap { tap: Tap::Laundry, opening: 1.0 });
    work.act(Action::Wait { minutes: 2.0 });
    // With the main shut: the regulator sits before the heater's valve.
    work.fits(PartKind::Regulator);
    work.act(Action::ColdValve { opening: 1.0 });
    work.act(Action::Wait { minutes: 2.0 });
    work.act(Action::Tap { tap: Tap::Laundry, opening: 0.0 });
    work.act(Action::Wait { minutes: 1.0 });
    let (now, _) = work.gauge();
    near(&"static psi", now, 55.0, 6.0);
    work.acts([Action::Gauge { on: false }, Action::Gauge { on: true }, Action::WaitForCutOut]);
    let (_, highest) = work.gauge();
    assert!(highest < 110.0, "{highest} psi after the heat-up");
    work.act(Action::Gauge { on: false });
    work
}

#[test]
fn the_right_part_cures() {
    perfect().cured();
}

#[test]
fn a_relief_valve_does_not() {
    assert_in_vain(&order(FaultId::F46, NUMBERS));
}

/// A house handed over without water is no house left as it should be.
#[test]
fn a_main_left_shut_costs() {
    let lines = |work: &Work| work.verdict().score.lines;
    assert_eq!(lines(&perfect()), []);
    let mut work = mended();
    work.acts([Action::MainValve { opening: 0.0 }, Action::TellResult, Action::HandOver]);
    let lines = lines(&work);
    assert!(
        matches!(&lines[..], [line] if line.rule == drill::RuleId::LeftOpen && line.points > 0.0),
        "{lines:#?}"
    );
}
