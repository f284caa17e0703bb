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
fn given_away(drill: &Drill) -> Option<Place> {
    let circle = Circle::of(&drill.job);
    let truth = drill.fault.id;
    PLACES.into_iter().find(|at| {
        let mut session = Session::begin(drill.job.clone());
        session.step(&Action::Look { at: *at });
        let log: Vec<Rc<_>> = session.log.clone();
        let rival = |id: &FaultId| !id.same_repair(truth) && !id.is_silent();
        !circle.alive(truth, &log, &[1]).iter().any(rival)
    })
}

#[test]
#[ignore = "a measure, not a bound"]
fn first_looks() {
    let mut given = std::collections::BTreeMap::<FaultId, (u32, u32, Vec<Place>)>::new();
    for seed in 0..400 {
        let drill = drill::make(&Order::chance(seed, Mode::Solo)).unwrap();
        let entry = given.entry(drill.fault.id).or_default();
        entry.0 += 1;
        if let Some(place) = given_away(&drill) {
            entry.1 += 1;
            entry.2.push(place);
        }
    }
    let all: u32 = given.values().map(|g| g.1).sum();
    println!("given away {all}");
    given.iter().filter(|(_, g)| g.1 > 0).for_each(|(id, g)| println!("{id} {} of {} {:?}", g.1, g.0, g.2));
}
