//! Gas in the lines of an empty house.
//! Trade sheet, section 9, F59: common practice, no source; spitting that clears as water runs, after two weeks and more
//! of rest.

use bench::person::Harm;
use bench::{Action, Sight};
use plant::fault::FaultId;
use plant::{Place, Tap};

use crate::in_vain::*;
use crate::technician::*;
use crate::work::*;

const THREE_WEEKS: [(&str, f64); 1] = [("away", 21.0)];

fn spits(seen: &[Sight]) -> bool {
    seen.iter().any(|sight| matches!(sight, Sight::TapRuns { spitting: true, .. }))
}

/// Windows open first; then the tap spits, and after some gallons it does not.
pub fn perfect() -> Work {
    let mut work = Work::at(&order(FaultId::F59, &THREE_WEEKS));
    work.acts(arrive());
    work.act(Action::Ventilate);
    work.act(Action::Tap { tap: Tap::Kitchen, opening: 1.0 });
    assert!(spits(&work.look(Place::Taps)));
    let spitting = work.step();
    work.act(Action::Wait { minutes: 5.0 });
    assert!(!spits(&work.look(Place::Taps)));
    let clear = work.step();
    work.act(Action::Tap { tap: Tap::Kitchen, opening: 0.0 });
    work.finds(&[spitting, clear]);
    work.acts(hand_over());
    work
}

#[test]
fn let_out_it_is_gone() {
    perfect().cured();
}

/// With the windows shut the same gas is told as what it is.
#[test]
fn without_air_it_could_have_burnt() {
    let mut work = Work::at(&order(FaultId::F59, &THREE_WEEKS));
    work.act(Action::Tap { tap: Tap::Kitchen, opening: 1.0 });
    let harms = work.act(Action::Wait { minutes: 5.0 }).harms;
    assert!(harms.iter().any(|harm| matches!(harm, Harm::FlammableGas { .. })), "{harms:?}");
}

#[test]
fn an_anode_is_changed_in_vain() {
    let (_, verdict) = changed_in_error(&order(FaultId::F59, &THREE_WEEKS));
    assert!(verdict.lost(drill::RuleId::ChangedInVain) > 0.0, "{verdict:#?}");
}
