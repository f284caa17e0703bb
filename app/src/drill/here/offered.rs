//! What is offered, from the same lists as the panel of acts, each act asked whether it can be done now.

use bench::{Action, Refusal, Session, refusal};
use plant::Place;
use yew::AttrValue;

use crate::drill::kit::on_the_van;
use crate::drill::known::Known;
use crate::drill::place::{Group, Offer, groups};
use crate::units::Units;

/// The keys that acts are done with, in order.
const KEYS: &str = "123456789abcdefghijklmnopqrstuvwxyz";

/// An act that can be done now.
#[derive(Clone, PartialEq)]
pub struct Can {
    /// Its key, as long as there are keys.
    pub key: Option<char>,
    /// What it says, with its heading.
    pub label: AttrValue,
    /// The heading it stands under.
    pub title: AttrValue,
    /// What it does; nothing for a list to choose from.
    pub action: Option<Action>,
}

/// An act that is refused now.
#[derive(Clone, PartialEq)]
pub struct Cannot {
    /// What it says.
    pub label: AttrValue,
    /// Why it is refused.
    pub why: Refusal,
}

/// Everything that a place offers.
pub fn offered(place: Place, session: &Session, known: &Known, units: Units) -> (Vec<Can>, Vec<Cannot>) {
    let mut keys = KEYS.chars();
    let (mut can, mut cannot) = (Vec::new(), Vec::new());
    let van = (place == Place::Van).then(|| Group::new("", on_the_van(session, units)));
    for group in groups(place, session, known, units).into_iter().chain(van) {
        for offer in group.offers {
            let title = group.title.clone();
            match offer {
                Offer::Do { action, label, .. } => match refusal(session, &action) {
                    Some(why) => cannot.push(Cannot { label, why }),
                    None => can.push(Can { key: keys.next(), label, title, action: Some(action) }),
                },
                // Each of them is offered by itself.
                Offer::All { .. } => {}
                Offer::Choose { label, .. } => can.push(Can { key: keys.next(), label, title, action: None }),
            }
        }
    }
    (can, cannot)
}

#[cfg(test)]
mod tests {
    use super::*;
    use bench::Cover;

    fn at(place: Place, session: &Session) -> (Vec<Can>, Vec<Cannot>) {
        offered(place, session, &Known::of(session), Units::Us)
    }

    #[test]
    fn what_is_behind_a_cover_is_refused_until_the_cover_is_off() {
        let mut session = Session::begin(crate::begin::example());
        let place = Place::UpperCompartment;
        let (can, cannot) = at(place, &session);
        let first = can.first().unwrap();
        assert!(cannot.iter().any(|one| one.why == Refusal::CoverOn { cover: Cover::Upper }));
        assert_eq!(first.key, Some('1'));
        for which in [Cover::Upper, Cover::UpperInsulation, Cover::UpperShield] {
            session.step(&Action::Cover { which, off: true });
        }
        let (more, fewer) = at(place, &session);
        assert!(more.len() > can.len() && fewer.len() < cannot.len());
    }

    #[test]
    fn the_van_offers_its_shelves_and_says_why_no_heater_is_carried_out_yet() {
        let (can, cannot) = at(Place::Van, &Session::begin(crate::begin::example()));
        assert!(can.len() > 20 && can.iter().all(|one| !one.label.is_empty()), "{}", can.len());
        assert!(cannot.iter().any(|one| one.why == Refusal::PipesOn));
    }

    #[test]
    fn what_is_said_to_be_refused_is_refused_and_nothing_else_is() {
        let session = Session::begin(crate::begin::example());
        let mut not = 0;
        for place in
            [Place::LoadCenter, Place::HeaterTop, Place::Relief, Place::Drain, Place::LowerCompartment]
        {
            let (can, cannot) = at(place, &session);
            let refused = |action: &Action| match bench::reduce(&session, action).1.shown {
                bench::Shown::Refused { why } => Some(why),
                _ => None,
            };
            for one in can.iter().filter_map(|one| one.action.as_ref()) {
                assert_eq!(refused(one), None, "{one:?}");
            }
            not += cannot.len();
        }
        assert!(not > 5, "{not}");
    }
}
