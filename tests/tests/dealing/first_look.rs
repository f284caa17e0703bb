//! No drill left to chance is given away by one look at the closed heater: of what the first look shows, more than one
//! repair is left among the suspects.

use std::rc::Rc;

use bench::{Action, Mode, Session};
use diagnosis::Circle;
use drill::{Drill, Order};
use plant::Place;
use plant::fault::FaultId;

/// What can be looked at with every cover on.
const PLACES: [Place; 5] = [Place::LoadCenter, Place::HeaterTop, Place::Relief, Place::Drain, Place::Taps];

/// The look that leaves one repair alone, where one does.
pub fn given_away(drill: &Drill) -> Option<Place> {
    let circle = Circle::of(&drill.job);
    let truth = drill.fault.id;
    PLACES.into_iter().find(|at| {
        let mut session = Session::begin(drill.job.clone());
        session.step(&Action::Look { at: *at });
        let log: Vec<Rc<_>> = session.log.clone();
        let rival = |id: &FaultId| !id.same_repair(truth) && !id.is_silent();
        !circle.alive(&drill.fault, &log, &[1]).iter().any(rival)
    })
}

/// What the table says of each fault holds in drills: none is given away.
#[test]
fn chance_deals_nothing_that_the_first_look_names() {
    for seed in 0..80 {
        let drill = drill::make(&Order::chance(seed, Mode::Solo)).unwrap();
        let at = given_away(&drill);
        assert!(at.is_none(), "seed {seed}: {} named by a look at {at:?}", drill.fault.id);
    }
}

/// A wish for one by name, family or level is a wish for it.
#[test]
fn a_named_one_is_dealt_all_the_same() {
    let order = Order { fault: drill::Wanted::One(FaultId::F45), ..Order::chance(3, Mode::Solo) };
    assert!(given_away(&drill::make(&order).unwrap()).is_some());
}
