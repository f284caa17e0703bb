//! The service's neutral is loose.
//! Trade sheet, section 9, F73: common practice, no source; the legs computed from the house's loads and the electrode.

use bench::{Action, Helper, Shown};
use drill::Order;
use plant::Screw::*;
use plant::Wire;
use plant::fault::FaultId;
use plant::household::{Answer, Question, Symptom};

use crate::in_vain::*;
use crate::technician::*;
use crate::work::*;

fn loose() -> Order {
    order(FaultId::F73, &[("ohms", 100.0)])
}

/// The heater is as it should be; leg to leg 240 V, leg to neutral two that are far apart and add up to it.
pub fn perfect() -> Work {
    let mut work = Work::at(&loose());
    assert_eq!(work.drill.job.account.symptom, Symptom::Lights);
    let asked = work.act(Action::Ask { question: Question::House }).shown;
    assert!(
        matches!(asked, Shown::Said { answer: Answer::House { dim: true, bright: true, .. } }),
        "{asked:?}"
    );
    work.acts(arrive());
    work.draw(20.0);
    work.amps(Wire::CableA, 18.75);
    work.act(open_panel());
    let across = work.volts(M1, M2, 240.0);
    let first = work.reads(M1, N);
    let one = work.step();
    let second = work.reads(M2, N);
    let two = work.step();
    assert!((first - second).abs() > 20.0 && (first + second - 238.0).abs() < 5.0, "{first} V, {second} V");
    work.make_dead_outside();
    work.finds(&[across, one, two]);
    work.act(close_panel());
    work.acts([close_box(), Action::TellResult, Action::StopAndCall { whom: Helper::Utility }]);
    work
}

#[test]
fn the_utility_is_called() {
    perfect().handed_on(Helper::Utility);
}

#[test]
fn a_breaker_does_not() {
    assert_in_vain(&loose());
}
