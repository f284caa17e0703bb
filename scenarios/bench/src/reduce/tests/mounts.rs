//! What of an element has to match besides volts and watts: its mount and its length.

use super::*;
use crate::reduce::judge;
use plant::{ElementLength, Mount};

fn house(heater: HeaterModel) -> Home {
    Home::sound(Setting { heater, ..home().setting })
}

fn ready(heater: HeaterModel) -> Session {
    let mut session = solo(house(heater));
    make_dead(&mut session, &[Screw::LEa, Screw::LEb]);
    drained_to_empty(&mut session);
    session
}

fn element(heater: HeaterModel, length: ElementLength, mount: Mount) -> Action {
    let (level, rating) = (Level::Lower, heater.plate().element);
    Action::Replace { part: NewPart::Element { level, rating, length, mount, seat_cleaned: true } }
}

/// Trade sheet 2.8 and 10.7: a thread takes no flange and four bolts take no thread; what touches the far wall does not
/// seat. It costs the way to the van, and the old one stays where it is.
#[test]
fn what_does_not_go_in_is_carried_back() {
    use ElementLength::{Long, Middle};
    for (heater, length, mount, why) in [
        (HeaterModel::Plain40, Middle, Mount::FourBolt, Refusal::OtherMount),
        (HeaterModel::Plain40, Long, Mount::ScrewIn, Refusal::TooLong),
        (HeaterModel::Tall50At277, Middle, Mount::ScrewIn, Refusal::OtherMount),
        (HeaterModel::Tall50At277, Long, Mount::FourBolt, Refusal::TooLong),
    ] {
        let mut session = ready(heater);
        let (clock, plant) = (session.clock, session.home.plant.clone());
        let act = element(heater, length, mount);
        assert_eq!(refusal(&session, &act), Some(why.clone()), "{heater}");
        let outcome = session.step(&act);
        assert_eq!(outcome.shown, Shown::Refused { why }, "{heater}");
        assert_eq!((outcome.took, session.clock - clock), (Seconds::minutes(5.0), Seconds::minutes(5.0)));
        // The old one has gone on cooling, and that is all.
        let mut old = session.home.plant.elements;
        for (now, then) in old.iter_mut().zip(plant.elements) {
            now.sheath = then.sheath;
        }
        assert_eq!(old, plant.elements, "{heater}");
        assert_eq!(session.me.spilled, Volume(0.0));
        assert_eq!(session.me.cost, 0.0);
        assert!(!has(&outcome, |f| matches!(f, Fact::Changed { .. })));
    }
}

/// What the plate asks for matches everywhere, and goes in whatever the mount.
#[test]
fn what_the_plate_asks_for_goes_in() {
    for &heater in HeaterModel::ALL {
        let plant = house(heater).plant;
        for level in [Level::Upper, Level::Lower] {
            assert!(judge::matches(&plant, &NewPart::asked_by(&plant.plate, level)), "{heater}");
        }
    }
    for heater in [HeaterModel::Plain40, HeaterModel::Tall50At277, HeaterModel::Large120] {
        let mut session = ready(heater);
        let part = NewPart::asked_by(&session.home.plant.plate, Level::Lower);
        let outcome = doing(&mut session, &[Action::Replace { part }]);
        assert!(has(&outcome, |f| matches!(f, Fact::Changed { matches: true, .. })), "{heater}");
    }
}

/// A shorter one goes in and does not match; it has to be changed for the right one, and no other like it helps.
#[test]
fn a_shorter_one_does_not_match() {
    let heater = HeaterModel::Plain40;
    let mut session = ready(heater);
    session.home.plant.elements[1].open = true;
    let fit = |session: &mut Session, length| {
        let outcome = doing(session, &[element(heater, length, Mount::ScrewIn)]);
        outcome.facts.iter().find_map(|fact| match fact {
            Fact::Changed { matches, needed, .. } => Some((*matches, *needed)),
            _ => None,
        })
    };
    assert_eq!(fit(&mut session, ElementLength::Short), Some((false, true)));
    assert_eq!(session.home.plant.elements[1].length, ElementLength::Short);
    let read = session.step(&Action::Read { what: Writing::StampLower }).shown;
    assert!(
        matches!(read, Shown::Stamp { length: ElementLength::Short, mount: Mount::ScrewIn, .. }),
        "{read:?}"
    );
    assert_eq!(fit(&mut session, ElementLength::Short), Some((false, false)));
    assert_eq!(fit(&mut session, ElementLength::Middle), Some((true, true)));
    assert_eq!(fit(&mut session, ElementLength::Middle), Some((true, false)));
}

/// A flange with four bolts opens a larger hole than a thread of 1 in.
#[test]
fn a_flange_lets_out_more() {
    let spilt = |heater: HeaterModel| {
        let mut session = solo(house(heater));
        make_dead(&mut session, &[Screw::LEa, Screw::LEb]);
        let part = NewPart::asked_by(&session.home.plant.plate, Level::Lower);
        doing(&mut session, &[Action::Replace { part }]);
        session.me.spilled.to_litres()
    };
    let (thread, flange) = (spilt(HeaterModel::Both50), spilt(HeaterModel::Tall50At277));
    assert!(flange > 1.2 * thread, "{flange} {thread}");
}
