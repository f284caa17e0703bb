//! Leads that hang together without labels: nothing on the screen says which of them is which.

use bench::{Action, MeterFunction, Session};
use plant::{End, Handle, Place, Point, Screw, Wire};

use super::meter::points_of;
use super::place::{Offer, point_offers};
use crate::store::{Desk, Lead};
use crate::text;
use crate::units::Units;

const HERE: Place = Place::UpperCompartment;
const LOOSE: [End; 3] = [
    End { wire: Wire::UpperSwitched, side: 1 },
    End { wire: Wire::UpperPermanent, side: 1 },
    End { wire: Wire::Transfer, side: 0 },
];

/// A heater laid open, its breaker off, three of its leads lifted without a label, and then some acts.
fn lifted(acts: &[Action]) -> Session {
    let mut session = Session::begin(crate::begin::example());
    session.access.off.extend(diagnosis::COVERS);
    for breaker in &mut session.home.plant.panel.breakers {
        breaker.handle = Handle::Off;
    }
    let lifts = LOOSE.map(|end| Action::Lift { end });
    lifts.iter().chain(acts).for_each(|act| drop(session.step(act)));
    text::during(&session);
    session
}

/// Words that give a lost end away: its own name, or its wire's.
fn gives_away(said: &str) -> bool {
    LOOSE.iter().any(|end| {
        let screw = end.home().name();
        said.contains(&text::wire(end.wire)) || said.contains(&format!("at {screw}"))
    })
}

/// Everything offered at a point: the words, and the acts without the end they are done to.
fn offered(session: &Session, point: Point) -> (Vec<String>, Vec<String>) {
    let told = |end: End| session.loose(end).unwrap_or_default().to_string();
    let letter = match point {
        Point::End(end) => told(end),
        Point::Screw(_) => String::new(),
    };
    let blank = |act: &Action, words: &str| match act {
        Action::Land { screw, torqued, .. } => format!("{screw} {torqued}"),
        _ => words.replace(&format!("wire {letter}"), "wire _"),
    };
    let (mut words, mut acts) = (Vec::new(), Vec::new());
    for offer in point_offers(session, point) {
        words.push(offer.label().to_string());
        match offer {
            Offer::Do { action, label, .. } => acts.push(blank(&action, &label)),
            Offer::Choose { options, .. } => {
                words.extend(options.iter().map(|(name, _)| name.to_string()));
                acts.extend(options.iter().map(|(name, act)| blank(act, name)));
            }
            Offer::All { .. } => {}
        }
    }
    (words, acts)
}

#[test]
fn lists_offers_and_names_know_loose_ends_by_their_letters_alone() {
    let session = lifted(&[]);
    let points = points_of(&session, HERE);
    let letters: Vec<char> = points
        .iter()
        .filter_map(|point| match point {
            Point::End(end) => session.loose(*end),
            Point::Screw(_) => None,
        })
        .collect();
    assert!(letters.len() == 3 && letters.is_sorted(), "{letters:?}");
    let wiring = &session.home.plant.wiring;
    for end in LOOSE {
        let letter = session.loose(end).unwrap();
        let name = text::point(end.into(), wiring);
        assert_eq!(name, format!("bare end of wire {letter}"));
        assert_eq!(text::mark(end.into()), letter.to_string());
        let (words, acts) = offered(&session, end.into());
        assert!(!words.iter().any(|said| gives_away(said)), "{words:?}");
        assert_eq!(acts, offered(&session, LOOSE[0].into()).1, "{end}");
    }
    // At a screw they are offered by their letters, none before another for its own sake.
    for screw in [Screw::UEa, Screw::UEb, Screw::U4] {
        let (words, _) = offered(&session, screw.into());
        let lands: Vec<&String> = words.iter().filter(|said| said.starts_with("Land")).collect();
        assert_eq!(lands.len(), 6);
        assert!(!lands.iter().any(|said| gives_away(said)), "{lands:?}");
        let order: Vec<char> = lands.iter().filter_map(|said| said.chars().last()).collect();
        assert!(order.is_sorted(), "{order:?}");
    }
}

#[test]
fn the_log_calls_an_end_what_it_was_called_then() {
    let [wrong, own, _] = LOOSE;
    let ohms = Action::Meter { function: MeterFunction::Ohms, red: wrong.into(), black: Screw::U2.into() };
    let land = Action::Land { end: wrong, screw: own.home(), torqued: true };
    let session = lifted(&[ohms, Action::Label { end: own }, land, Action::Look { at: HERE }]);
    let layout = session.home.plant.wiring.layout;
    let told = |at: usize| {
        let entry = &session.log[at];
        format!("{} {}", text::act(entry, Units::Us), text::shown(entry, Units::Us, layout))
    };
    // Each was still known when it was lifted, the last one too.
    for (at, end) in LOOSE.iter().enumerate() {
        assert!(told(at).contains(&text::wire(end.wire)), "{}", told(at));
    }
    for at in 3..session.log.len() {
        assert!(!gives_away(&told(at)), "{}", told(at));
    }
    assert!(told(4).contains("without labels"), "{}", told(4));
    // A look tells what hangs, in the order of the letters, and not that one is on another's screw.
    let sights = text::sights(
        &match &session.log[6].outcome.shown {
            bench::Shown::Sights { sights, .. } => sights.clone(),
            other => panic!("{other:?}"),
        },
        session.log[6].at,
        Units::Us,
    );
    assert_eq!(sights.iter().filter(|said| said.starts_with("Off its screw: wire")).count(), 2, "{sights:?}");
    assert!(!sights.iter().any(|said| said.contains("instead of")), "{sights:?}");
    // Afterwards everything has its name again.
    text::about(&session.home.plant);
    assert!(told(5).contains(&text::wire(wrong.wire)), "{}", told(5));
}

#[test]
fn hand_and_leads_come_off_what_loses_its_name() {
    let session = lifted(&[]);
    let [first, second, third] = LOOSE;
    let since = session.log[1].at;
    let mut desk = Desk { point: Some(second.into()), ..Desk::default() };
    desk.put(Lead::Red, first.into());
    desk.put(Lead::Black, Screw::UEa.into());
    let lost = session.lost();
    desk.let_go(&lost, since);
    assert_eq!((desk.point, desk.red, desk.black), (None, None, Some(Screw::UEa.into())));
    // What hung there before may be under a hand while another one comes beside it.
    desk.put(Lead::Red, first.into());
    desk.point = Some(third.into());
    desk.let_go(&lost, session.log[2].at);
    assert_eq!((desk.point, desk.red), (None, Some(first.into())));
}
