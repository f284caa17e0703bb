//! A few acts tried in a copy of the world and thrown away, while the learner reads the complaint: a browser compiles
//! code when it first runs, and on an old laptop the first act would wait for it.

use std::ops::ControlFlow;

use bench::{Action, Cover, MeterFunction, Session, Writing};
use plant::household::Question;
use plant::{Place, Screw};
use yew::prelude::*;

use super::known::Known;
use super::place::groups;
use crate::said::use_units;
use crate::store::{Ongoing, World};
use crate::text;
use crate::turns::Turns;
use crate::units::Units;

/// Milliseconds after the drill is on the page: what is drawn late has its turns first.
const AFTER_MS: u32 = 300;

/// The world in which it is tried.
#[derive(Properties, PartialEq)]
pub struct Props {
    /// The world as it is when the page is there.
    pub session: World,
}

/// Tries the acts, in turns. It draws nothing and changes nothing.
#[component]
pub fn Rehearsal(props: &Props) -> Html {
    let units = use_units();
    let session = props.session.clone();
    use_effect_with((), move |()| {
        let mut scratch: Session = (*session).clone();
        let mut acts = acts().into_iter();
        let turns = Turns::after(AFTER_MS, move |_| match acts.next() {
            Some((at, act)) => {
                scratch = tried(&scratch, at, &act, units);
                true
            }
            None => false,
        });
        move || drop(turns)
    });
    html! {}
}

/// One of each kind that a call begins with, and where it is done.
fn acts() -> Vec<(Place, Action)> {
    let volts = |red: Screw, black: Screw| Action::Meter {
        function: MeterFunction::Volts,
        red: red.into(),
        black: black.into(),
    };
    vec![
        (Place::Customer, Action::Ask { question: Question::LastGood }),
        (Place::Customer, Action::Read { what: Writing::Plate }),
        (Place::Customer, Action::TellHousehold),
        (Place::LoadCenter, Action::Breaker { slot: 0, on: false }),
        (Place::UpperCompartment, Action::Cover { which: Cover::Upper, off: true }),
        (Place::UpperCompartment, Action::Cover { which: Cover::UpperInsulation, off: true }),
        (Place::UpperCompartment, Action::Cover { which: Cover::UpperShield, off: true }),
        (Place::UpperCompartment, volts(Screw::H1, Screw::H3)),
        (Place::Van, Action::AgreeCost),
        (Place::Taps, Action::WaitForCutOut),
    ]
}

/// The world after an act, everything worked out that the page would show of it.
fn tried(session: &Session, at: Place, act: &Action, units: Units) -> Session {
    // As much of a wait as is waited at once; the rest has turns of its own.
    let ControlFlow::Break(next) = Ongoing::begin(session, act) else { return session.clone() };
    if let Some(entry) = next.log.last() {
        let _ = text::fit(text::act(entry, units), next.home.plant.wiring.layout);
        let _ = (text::shown(entry, units, next.home.plant.wiring.layout), text::aftermath(entry, units));
    }
    let known = Known::of(&next);
    let _ = groups(at, &next, &known, units);
    next
}
