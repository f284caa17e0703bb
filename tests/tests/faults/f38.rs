//! Cold water crosses over in one fixture.
//! Trade sheet, section 9, F38: common practice, no source.

use bench::{Action, NewPart, Shown, Sight};
use plant::Tap;
use plant::fault::FaultId;

use crate::in_vain::*;
use crate::work::*;

const NUMBERS: &[(&str, f64)] = &[("tap", 2.0), ("diameter", 0.005)];

/// Lukewarm at every tap, hot at the heater; with the cold valve shut a tap keeps running until one fixture's stops
/// are shut.
pub fn perfect() -> Work {
    let mut work = Work::at(&order(FaultId::F38, NUMBERS));
    work.act(Action::TellHousehold);
    let kitchen = work.draw_at(Tap::Kitchen, 3.0);
    assert!(kitchen.first.to_fahrenheit() < 108.0, "{kitchen:?}");
    let lukewarm = work.step();
    work.acts([Action::ColdValve { opening: 0.0 }, Action::Tap { tap: Tap::Kitchen, opening: 1.0 }]);
    assert!(runs_on(&work.act(Action::Wait { minutes: 2.0 }).shown));
    let crosses = work.step();
    let mut shut = Vec::new();
    for tap in [Tap::Laundry, Tap::Shower, Tap::Bath] {
        let stopped = !runs_on(&work.act(Action::Stops { tap, shut: true }).shown);
        assert_eq!(stopped, tap == Tap::Bath, "{tap}");
        shut.push(work.step());
    }
    work.finds(&[&[lukewarm, crosses][..], &shut].concat());
    work.act(Action::Replace { part: NewPart::Cartridge { tap: Tap::Bath } });
    for tap in [Tap::Laundry, Tap::Shower, Tap::Bath] {
        work.act(Action::Stops { tap, shut: false });
    }
    assert!(!runs_on(&work.act(Action::Wait { minutes: 2.0 }).shown));
    work.acts([Action::ColdValve { opening: 1.0 }, Action::Tap { tap: Tap::Kitchen, opening: 0.0 }]);
    let kitchen = work.draw_at(Tap::Kitchen, 3.0);
    assert!(kitchen.first.to_fahrenheit() > 110.0, "{kitchen:?}");
    work.acts([Action::TellResult, Action::HandOver]);
    work
}

fn runs_on(shown: &Shown) -> bool {
    let Shown::DoneWith { sights } = shown else { panic!("{shown:?}") };
    sights.iter().any(|s| matches!(s, Sight::TapRuns { flow, .. } if flow.to_gpm() > 0.05))
}

#[test]
fn the_right_cartridge_cures() {
    perfect().cured();
}

#[test]
fn an_element_does_not() {
    assert_in_vain(&order(FaultId::F38, NUMBERS));
}
