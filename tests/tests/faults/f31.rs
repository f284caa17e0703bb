//! The equipment ground is off and an element leaks.
//! Trade sheet, section 9, F31: common practice, no source; 7.8 (computed): 120 V through 20 kΩ into 1 kΩ is 5.7 mA.

use bench::{Action, Display, Helper, KnownSource, Licence, MeterFunction, Shown};
use drill::Order;
use plant::Screw::{self, *};
use plant::fault::{FaultId, PartKind};
use plant::household::{Answer, Question};
use plant::{Level, Wire};

use crate::in_vain::*;
use crate::technician::*;
use crate::work::*;

fn tingles(licence: Licence) -> Order {
    let numbers = [("level", 1.0), ("fraction", 0.8), ("ohms", 2e4)];
    Order { licence, ..order(FaultId::F31, &numbers) }
}

/// The tank stands at volts that a low-impedance meter does not pull down to nothing, and at none with the breaker off.
fn found(work: &mut Work) -> [u32; 2] {
    let asked = work.act(Action::Ask { question: Question::House }).shown;
    assert!(matches!(
        asked,
        Shown::Said { answer: Answer::House { tingle: true, dim: false, bright: false } }
    ));
    work.opens_up();
    let Shown::Meter { display: Display::Volts { volts } } =
        work.act(read(MeterFunction::LowVolts, Shell, Pipe)).shown
    else {
        panic!("no volts")
    };
    assert!((3.0..60.0).contains(&volts.get()), "{volts:?}");
    let shell = work.step();
    // The pipe is the ground to go by: a live leg against it shows that it is one.
    work.volts(H1, Pipe, 120.0);
    let slot = work.slot();
    work.acts([Action::Breaker { slot, on: false }, Action::Lock { slot, on: true }]);
    work.ghost(Shell, Pipe);
    [shell, work.step()]
}

/// Dead by readings against the pipe: the tank is no ground here.
fn proved_to_the_pipe(work: &mut Work, screws: &[Screw]) {
    let low = |a, b| read(MeterFunction::LowVolts, a, b);
    work.act(low(H1, H3));
    for screw in [H1, H3].iter().chain(screws) {
        work.act(low(*screw, Pipe));
    }
    work.act(Action::ProveMeter { on: KnownSource::ProvingUnit });
    assert!(work.session.me.proved_dead.is_some(), "not proved dead");
}

pub fn perfect() -> Work {
    let mut work = Work::at(&tingles(Licence::Electrician));
    let [shell, off] = found(&mut work);
    proved_to_the_pipe(&mut work, &[LEa, LEb]);
    work.act(Action::ZeroLeads);
    work.acts(lift_element(Level::Lower));
    let ground = work.over_or_kilohms(Shell, Pipe);
    let leak = work.over_or_kilohms(LEb, Shell);
    work.finds(&[shell, off, ground, leak]);
    work.act(Action::Remake { end: end(Wire::CableG, Jg), torqued: true });
    work.ohms(Shell, Pipe, 0.05, 0.1);
    work.fits_drained(PartKind::LowerElement);
    work.insulated(LEa, Shell);
    work.acts(land_element(Level::Lower));
    work.proves(18.75);
    work.ghost(Shell, Pipe);
    work.acts(hand_over());
    work
}

#[test]
fn ground_and_element_cure() {
    perfect().cured();
}

/// The ground alone takes the tingle away and leaves the leak.
#[test]
fn the_ground_alone_does_not() {
    let mut work = Work::at(&tingles(Licence::Electrician));
    found(&mut work);
    proved_to_the_pipe(&mut work, &[]);
    work.act(Action::Remake { end: end(Wire::CableG, Jg), torqued: true });
    work.runs();
    work.ghost(Shell, Pipe);
    work.acts(hand_over());
    assert!(!work.verdict().cure.is_right());
}

#[test]
fn a_plumber_locks_off_and_calls_an_electrician() {
    let mut work = Work::at(&tingles(Licence::Plumber));
    let evidence = found(&mut work);
    work.finds(&evidence);
    work.acts(close(Level::Lower));
    work.acts(close(Level::Upper));
    work.acts([close_box(), Action::TellResult, Action::StopAndCall { whom: Helper::Electrician }]);
    work.handed_on(Helper::Electrician);
}

#[test]
fn a_breaker_does_not() {
    assert_in_vain(&tingles(Licence::Electrician));
}
