//! Leads that hang off together without labels lose their names, and nothing else of them changes.

use std::collections::BTreeSet;

use super::*;

const UEA: (Wire, u8) = (Wire::UpperSwitched, 1);
const UEB: (Wire, u8) = (Wire::UpperPermanent, 1);
const U4: (Wire, u8) = (Wire::Transfer, 0);
const H1: (Wire, u8) = (Wire::FeedA, 1);

/// A heater laid open and dead, with a kit's seed.
fn open(seed: u64) -> Session {
    let mut job = job(home(), Mode::Solo, &[]);
    job.kit.seed = seed;
    let mut session = Session::begin(job);
    make_dead(&mut session, &[]);
    session
}

fn lift(session: &mut Session, ends: &[(Wire, u8)]) {
    for &(wire, side) in ends {
        doing(session, &[Action::Lift { end: end(wire, side) }]);
    }
}

fn letters(session: &Session, ends: &[(Wire, u8)]) -> Vec<Option<char>> {
    ends.iter().map(|&(wire, side)| session.loose(end(wire, side))).collect()
}

fn land((wire, side): (Wire, u8), screw: Screw) -> Action {
    Action::Land { end: end(wire, side), screw, torqued: true }
}

#[test]
fn only_leads_that_hang_together_without_labels_lose_their_names() {
    let mut session = open(1);
    lift(&mut session, &[UEA]);
    assert!(session.lost().is_empty(), "one alone is known by the empty screw");
    doing(&mut session, &[land(UEA, Screw::UEa)]);
    lift(&mut session, &[UEB, (Wire::LowerSwitched, 1), (Wire::Strap, 1)]);
    assert!(session.lost().is_empty(), "one here, one below, and a strap");
    doing(&mut session, &[Action::Label { end: end(UEB.0, UEB.1) }]);
    lift(&mut session, &[UEA]);
    assert!(session.lost().is_empty(), "the other one has its label");
    lift(&mut session, &[U4]);
    let lost: Vec<End> = session.lost().into_iter().map(|one| one.end).collect();
    assert!(lost.len() == 2 && !lost.contains(&end(UEB.0, UEB.1)), "{lost:?}");
    // Cables of the house and the bond say what they are.
    doing(&mut session, &[Action::Cover { which: Cover::JunctionBox, off: true }]);
    lift(&mut session, &[(Wire::CableA, 1), (Wire::CableB, 1), (Wire::Bond, 0)]);
    assert_eq!(session.lost().len(), 2);
}

#[test]
fn a_letter_stays_with_its_end_and_says_nothing_of_the_screw_or_of_the_order() {
    let ends = [UEA, UEB, U4];
    let mut orders = BTreeSet::new();
    for seed in 0..40 {
        let mut session = open(seed);
        lift(&mut session, &ends[..2]);
        let two = letters(&session, &ends);
        lift(&mut session, &ends[2..]);
        let three = letters(&session, &ends);
        assert!(two[2].is_none() && two[..2] == three[..2] && three.iter().all(Option::is_some), "{two:?}");
        doing(&mut session, &[land(UEA, Screw::U4), land(UEB, Screw::UEb)]);
        assert_eq!(letters(&session, &ends), three);
        // Lifted the other way round they are called the same.
        let mut other = open(seed);
        lift(&mut other, &[U4, UEB, UEA]);
        assert_eq!(letters(&other, &ends), three);
        let all: Vec<char> = other.lost().into_iter().map(|one| one.letter).collect();
        assert!(all.is_sorted() && all.len() == 3 && all.iter().all(char::is_ascii_uppercase), "{all:?}");
        let mut by_letter: Vec<usize> = vec![0, 1, 2];
        by_letter.sort_by_key(|at| three[*at]);
        orders.insert(by_letter);
    }
    assert_eq!(orders.len(), 6, "every order comes up: {orders:?}");
}

#[test]
fn nobody_writes_a_label_for_a_wire_that_nobody_knows() {
    let mut session = open(3);
    lift(&mut session, &[UEA, UEB]);
    let label = Action::Label { end: end(UEA.0, UEA.1) };
    assert_eq!(
        session.step(&label).shown,
        Shown::Refused { why: Refusal::WhichWire { end: end(UEA.0, UEA.1) } }
    );
    // The other one landed, it is no better known.
    doing(&mut session, &[land(UEB, Screw::UEb)]);
    assert!(matches!(session.step(&label).shown, Shown::Refused { .. }));
    // On a screw it can be labelled with that screw, and its letter stays all the same.
    doing(&mut session, &[land(UEA, Screw::UEa), label]);
    assert!(session.loose(end(UEA.0, UEA.1)).is_some());
    // A refused act mixes nothing up.
    let mut live = open(3);
    lift(&mut live, &[UEA]);
    assert!(matches!(live.step(&Action::Lift { end: end(UEA.0, UEA.1) }).shown, Shown::Refused { .. }));
    assert!(live.lost().is_empty());
}

/// What the learner has left: a meter, and what it reads is the true end's.
#[test]
fn continuity_sorts_them_out_and_a_wrong_screw_is_wrong() {
    let mut session = open(5);
    lift(&mut session, &[UEA, UEB, H1]);
    let mut reads = |one: (Wire, u8), screw: Screw| {
        let (red, black) = (Point::End(end(one.0, one.1)), Point::Screw(screw));
        let shown = doing(&mut session, &[Action::Meter { function: MeterFunction::Ohms, red, black }]).shown;
        match shown {
            Shown::Meter { display: Display::Ohms { ohms } } => Some(ohms.get()),
            Shown::Meter { display: Display::Over } => None,
            other => panic!("{other:?}"),
        }
    };
    assert!(reads(UEA, Screw::U2).is_some_and(|ohms| ohms < 1.0));
    assert!(reads(UEB, Screw::H4).is_some_and(|ohms| ohms < 1.0));
    assert!(reads(UEB, Screw::U2).is_none_or(|ohms| ohms > 1.0));
    let outcome = doing(&mut session, &[land(UEB, Screw::UEa)]);
    assert!(has(&outcome, |fact| matches!(fact, Fact::Miswired { on: Screw::UEa, .. })), "{outcome:?}");
}

#[test]
fn a_new_heater_brings_leads_that_are_known() {
    let mut session = open(7);
    doing(&mut session, &[Action::Cover { which: Cover::JunctionBox, off: true }]);
    lift(&mut session, &[(Wire::FeedA, 0), (Wire::FeedB, 0), (Wire::Bond, 0)]);
    assert_eq!(session.lost().len(), 2);
    drained_to_empty(&mut session);
    doing(&mut session, &[Action::PartPipes, Action::CarryOut { helped: true }]);
    let plate = session.home.plant.plate;
    doing(&mut session, &[Action::SetHeater { nominal: plate.nominal, rating: plate.element }]);
    assert!(session.lost().is_empty());
}
