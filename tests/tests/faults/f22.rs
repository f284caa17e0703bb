//! One leg of the service is lost.
//! Trade sheet, section 9, F22: common practice, no source; the dead leg's voltage computed from the house's loads.

use bench::{Action, Helper, Shown};
use drill::Order;
use plant::Screw::*;
use plant::Wire;
use plant::fault::FaultId;
use plant::household::{Answer, Question};

use crate::in_vain::*;
use crate::technician::*;
use crate::work::*;

fn lost() -> Order {
    order(FaultId::F22, &[("lost", 1.0)])
}

/// Half the house is dim; at the main lugs one leg is low, and the two are not 240 V apart: what stands on the dead one
/// comes back through what is on from leg to leg, the more so while an element calls.
pub fn perfect() -> Work {
    let mut work = Work::at(&lost());
    let asked = work.act(Action::Ask { question: Question::House }).shown;
    assert!(matches!(
        asked,
        Shown::Said { answer: Answer::House { dim: true, bright: false, tingle: false } }
    ));
    work.acts(arrive());
    work.act(open_panel());
    let live = work.volts(M1, N, 120.0);
    let dead = work.between(M2, N, 10.0, 100.0);
    let across = work.between(M1, M2, 20.0, 200.0);
    // Its lights glow while an element joins the legs, less without.
    let with = work.session.home.plant.energise(&[]).volts(M2.into(), N.into()).get();
    work.make_dead_outside();
    let without = work.session.home.plant.energise(&[]).volts(M2.into(), N.into()).get();
    assert!(with > without + 5.0, "{with} V with the heater on, {without} V without");
    work.finds(&[live, dead, across]);
    work.act(close_panel());
    work.acts([close_box(), Action::TellResult, Action::StopAndCall { whom: Helper::Utility }]);
    work
}

#[test]
fn the_utility_is_called() {
    perfect().handed_on(Helper::Utility);
}

/// A receptacle on the lost leg's own side would prove no meter.
#[test]
fn a_dead_receptacle_proves_nothing() {
    let mut work = Work::at(&order(FaultId::F22, &[("lost", 0.0)]));
    work.acts([Action::TellHousehold, Action::Breaker { slot: 2, on: false }]);
    work.act(Action::ProveMeter { on: bench::KnownSource::Receptacle });
    assert!(work.session.me.meter_proved.is_none());
    work.act(Action::ProveMeter { on: bench::KnownSource::ProvingUnit });
    assert!(work.session.me.meter_proved.is_some());
}

/// What the heater gets is far from what its plate asks.
#[test]
fn the_heater_hardly_warms() {
    let mut work = Work::at(&lost());
    work.acts(arrive());
    let amps = work.clamped(Wire::CableA);
    assert!((0.5..12.0).contains(&amps), "{amps} A");
}

#[test]
fn an_element_does_not() {
    assert_in_vain(&lost());
}
