//! Demand beyond capacity: every test is good.
//! Trade sheet, section 9, F04: common practice, no source; draw of 70 % of the nominal volume within 10 %, 18.75 A of 2.1 (computed).

use bench::{Action, Probe, Shown, Writing};
use plant::Screw::{Ja, Jb, Jg, LEa, LEb, UEa, UEb};
use plant::fault::{Advice, FaultId};
use plant::{Level, Place, Tap, Wire};

use crate::in_vain::*;
use crate::technician::*;
use crate::work::*;

/// Satisfied with nothing in either leg, the full volume, both elements at their current, all dry and clean.
pub fn perfect() -> Work {
    let mut work = Work::at(&order(FaultId::F04, &[("demand", 2.0)]));
    work.acts(arrive());
    work.act(Action::WaitForCutOut);
    let mut steps = vec![work.amps(Wire::FeedA, 0.0), work.amps(Wire::FeedB, 0.0)];
    let shower = work.draw_at(Tap::Shower, 2.0);
    near(&"shower, °F", shower.first.to_fahrenheit(), 120.0, 6.0);
    steps.push(work.step());
    // Both legs stand as they should to a ground that is one.
    steps.extend([work.volts(Ja, Jg, 120.0), work.volts(Jb, Jg, 120.0)]);
    work.act(Action::Sample { tap: Tap::Kitchen, hot: true });
    steps.push(work.step());
    let bucket = work.draw(40.0);
    steps.push(work.step());
    near(&"first of the bucket, °F", bucket.first.to_fahrenheit(), 120.0, 5.0);
    let fell = bucket.fell_after.expect("it runs out in the end").to_gallons();
    near(&"gallons before it fell 15 °F", fell, 0.7 * 40.0, 4.0);
    steps.push(work.amps(Wire::FeedA, 18.75));
    work.act(Action::Wait { minutes: 40.0 });
    steps.push(work.amps(Wire::FeedA, 18.75));
    for place in [Place::JunctionBox, Place::HeaterTop, Place::Drain, Place::Relief] {
        work.look(place);
        steps.push(work.step());
    }
    work.hears(Place::LowerCompartment);
    steps.push(work.step());
    work.act(Action::WaitForCutOut);
    steps.push(work.amps(Wire::FeedB, 0.0));
    // No pipe ticks as hot water runs, and the main is as cold as ever.
    work.acts([Action::Tap { tap: Tap::Kitchen, opening: 1.0 }, Action::Wait { minutes: 2.0 }]);
    work.hears(Place::HeaterTop);
    steps.push(work.step());
    work.act(Action::Thermometer { at: Probe::ColdPipe });
    steps.push(work.step());
    work.act(Action::Tap { tap: Tap::Kitchen, opening: 0.0 });
    work.acts(open(Level::Upper));
    work.acts(open(Level::Lower));
    let dials = work.act(Action::Read { what: Writing::Dials }).shown;
    let Shown::Dials { upper, lower } = dials else { panic!("{dials:?}") };
    near(&"upper dial", upper.to_fahrenheit(), 120.0, 0.1);
    near(&"lower dial", lower.to_fahrenheit(), 120.0, 0.1);
    steps.push(work.step());
    for place in [Place::UpperCompartment, Place::LowerCompartment] {
        work.look(place);
        steps.push(work.step());
    }
    // Both thermostats close within 15 °F of their dials.
    for (level, wire) in [(Level::Lower, Wire::LowerSwitched), (Level::Upper, Wire::UpperSwitched)] {
        work.act(Action::WaitForCutOut);
        steps.push(called_warm(&mut work, level, wire));
    }
    work.act(Action::WaitForCutOut);
    // Nor does a coil part while the water beside it warms: both heights came to their dials.
    for level in [Level::Upper, Level::Lower] {
        let shell = work.degrees(Probe::Shell { level });
        assert!(shell > 105.0, "{level} rests at {shell} °F");
        steps.push(work.step());
    }
    // Nor does an element leak softly to the shell.
    work.make_dead(&[UEa, UEb, LEa, LEb]);
    steps.extend(work.elements_clear());
    work.runs();
    work.draw(20.0);
    work.until(Wire::FeedA, 18.75);
    work.act(Action::WaitForCutOut);
    steps.extend([work.amps(Wire::FeedA, 0.0), work.amps(Wire::FeedB, 0.0)]);
    work.finds(&steps);
    work.act(Action::Advise { advice: Advice::DemandExceedsCapacity });
    work.acts(hand_over());
    work
}

/// Draws by the gallon until an element is called; the shell beside its thermostat is still warm then.
fn called_warm(work: &mut Work, level: Level, wire: Wire) -> u32 {
    for _ in 0..60 {
        work.draw(1.0);
        if work.clamped(wire) > 15.0 {
            let called = work.step();
            let shell = work.degrees(Probe::Shell { level });
            assert!(shell > 85.0, "{level} called at {shell} °F");
            return called;
        }
    }
    panic!("{level} never called");
}

#[test]
fn the_right_words_end_it() {
    perfect().cured();
}

#[test]
fn an_element_does_not() {
    assert_in_vain(&order(FaultId::F04, &[("demand", 2.0)]));
}
