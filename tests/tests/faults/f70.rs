//! Limit off the shell.
//! Trade sheet, section 9, F70: common practice, no source; water 10 °F and more above the limit's 170 °F, both poles
//! closed.

use bench::Sight;
use plant::Level;
use plant::fault::FaultId;

use crate::in_vain::*;
use crate::runaway;
use crate::work::*;

const OFF: [(&str, f64); 1] = [("grip", 0.0)];

/// The button lies in, and light shows behind the limit.
pub fn perfect() -> Work {
    let loose = Sight::LimitOffTheShell { level: Level::Upper };
    runaway::stopped(FaultId::F70, &OFF, &[loose, Sight::Button { proud: false }])
}

#[test]
fn both_parts_cure() {
    perfect().cured();
}

#[test]
fn a_relief_valve_does_not() {
    assert_in_vain(&order(FaultId::F70, &OFF));
}
