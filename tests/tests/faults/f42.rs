//! Colder water comes in.
//! Trade sheet, section 9, F42: common practice, no source; 40 to 45 °F at the inlet, a rise of 80 °F, recovery by
//! 2.4 (computed).

use bench::{Action, Probe};
use drill::Order;
use plant::climate::Climate;
use plant::fault::{Advice, FaultId};
use plant::{Place, Tap, Wire};

use crate::in_vain::*;
use crate::technician::*;
use crate::work::*;

const COLD: [(&str, f64); 2] = [("inlet", 41.0), ("demand", 1.2)];

fn in_winter() -> Order {
    Order { climate: Some(Climate::HarborBend), day: Some(20), ..order(FaultId::F42, &COLD) }
}

/// Everything is as it should be, and the cold pipe is twelve degrees and more below this town's.
pub fn perfect() -> Work {
    let mut work = Work::at(&in_winter());
    work.acts(arrive());
    work.act(Action::WaitForCutOut);
    let mut steps = vec![work.amps(Wire::FeedA, 0.0)];
    work.act(Action::Tap { tap: Tap::Kitchen, opening: 1.0 });
    work.act(Action::Wait { minutes: 3.0 });
    let inlet = work.degrees(Probe::ColdPipe);
    near(&"inlet, °F", inlet, 41.0, 2.0);
    steps.push(work.step());
    work.act(Action::Tap { tap: Tap::Kitchen, opening: 0.0 });
    let bucket = work.draw(36.0);
    near(&"first of the bucket, °F", bucket.first.to_fahrenheit(), 120.0, 5.0);
    steps.push(work.step());
    steps.push(work.amps(Wire::FeedA, 18.75));
    work.look(Place::HeaterTop);
    work.finds(&steps);
    work.act(Action::Advise { advice: Advice::ColdMain });
    work.acts(hand_over());
    work
}

#[test]
fn the_right_words_end_it() {
    perfect().cured();
}

#[test]
fn an_element_does_not() {
    assert_in_vain(&in_winter());
}
