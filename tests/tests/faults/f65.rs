//! The neutral of a heater on hot and neutral is open.
//! Trade sheet, section 9, F65: common practice, no source; 1.9, from memory: the element's neutral screw stands at the leg's voltage.

use bench::{Action, Clamped, Licence, MeterFunction};
use drill::Order;
use plant::Screw::*;
use plant::fault::FaultId;
use plant::{HeaterModel, Level, Place, Wire};

use crate::in_vain::*;
use crate::technician::*;
use crate::work::*;

fn open_neutral() -> Order {
    Order { heater: Some(HeaterModel::Small20), licence: Licence::Plumber, ..order(FaultId::F65, &[]) }
}

pub fn perfect() -> Work {
    let mut work = Work::at(&open_neutral());
    work.acts(arrive());
    let seen = work.look(Place::JunctionBox);
    assert!(seen.contains(&bench::Sight::Charred { end: end(Wire::CableN, Jb) }), "{seen:?}");
    work.acts(open(Level::Upper));
    let across = work.volts(H1, H3, 0.0);
    let hot = work.volts(H1, Shell, 120.0);
    let neutral = work.volts(H3, Shell, 120.0);
    work.volts(end(Wire::CableN, Jb), Shell, 0.0);
    work.make_dead(&[Ja, Jb]);
    work.finds(&[across, hot, neutral]);
    work.act(Action::Remake { end: end(Wire::CableN, Jb), torqued: true });
    work.runs();
    work.amps(Wire::FeedA, 12.3);
    work.act(Action::WaitForCutOut);
    work.amps(Wire::FeedA, 0.0);
    work.acts(hand_over());
    work
}

#[test]
fn the_splice_made_again_cures() {
    perfect().cured();
}

/// The same on 277 V.
#[test]
fn an_open_neutral_at_277_volts() {
    let order = Order { heater: Some(HeaterModel::Tall50At277), ..open_neutral() };
    let mut work = Work::at(&order);
    work.opens_up();
    work.volts(H1, Shell, 277.0);
    work.volts(UEb, Shell, 277.0);
    work.volts(UEa, UEb, 0.0);
    let act = Action::Clamp { around: Clamped::Wire { wire: Wire::CableN } };
    assert!(matches!(work.act(act).shown, bench::Shown::Clamp { amps } if amps.get() < 0.2));
    work.act(read(MeterFunction::Volts, Ja, Jb));
}

#[test]
fn an_element_does_not() {
    assert_in_vain(&open_neutral());
}
