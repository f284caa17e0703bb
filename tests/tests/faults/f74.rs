//! One fixture's limit stop.
//! Trade sheet, section 9, F74: common practice, no source.

use bench::{Action, NewPart};
use plant::Tap;
use plant::fault::FaultId;

use crate::in_vain::*;
use crate::work::*;

const NUMBERS: &[(&str, f64)] = &[("stop", 0.7)];

/// One shower is lukewarm while the kitchen is hot, and nothing crosses over.
pub fn perfect() -> Work {
    let mut work = Work::at(&order(FaultId::F74, NUMBERS));
    work.act(Action::TellHousehold);
    let shower = work.draw_at(Tap::Shower, 3.0);
    let first = work.step();
    let kitchen = work.draw_at(Tap::Kitchen, 3.0);
    let second = work.step();
    assert!(
        shower.first.to_fahrenheit() < 105.0 && kitchen.first.to_fahrenheit() > 110.0,
        "{shower:?} {kitchen:?}"
    );
    work.act(Action::ColdValve { opening: 0.0 });
    work.act(Action::Tap { tap: Tap::Kitchen, opening: 1.0 });
    work.act(Action::Wait { minutes: 2.0 });
    let dry = work.step();
    work.finds(&[first, second, dry]);
    work.act(Action::Stops { tap: Tap::Shower, shut: true });
    work.act(Action::Replace { part: NewPart::Cartridge { tap: Tap::Shower } });
    work.act(Action::Stops { tap: Tap::Shower, shut: false });
    work.acts([Action::ColdValve { opening: 1.0 }, Action::Tap { tap: Tap::Kitchen, opening: 0.0 }]);
    let shower = work.draw_at(Tap::Shower, 3.0);
    assert!(shower.first.to_fahrenheit() > 108.0, "{shower:?}");
    work.acts([Action::TellResult, Action::HandOver]);
    work
}

#[test]
fn the_right_part_cures() {
    perfect().cured();
}

#[test]
fn a_thermostat_does_not() {
    assert_in_vain(&order(FaultId::F74, NUMBERS));
}
