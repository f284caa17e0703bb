//! The next thing to do: the earliest thing the safety order asks for that is not so yet.

use bench::{Action, MeterFunction, Session, Writing};
use plant::household::Question;
use plant::{Circuit, Level, Place, Screw};

use super::past::{self, Verdict, last};
use super::stage::Stage;
use super::{Guided, limit, mend, prove};
use crate::drill::known::Known;

/// The next thing to do.
#[derive(Clone, PartialEq, Debug)]
pub struct Next {
    /// The stage that the job is at.
    pub stage: Stage,
    /// What to do, by its name in the book; the reason has `why-` in it.
    pub say: &'static str,
    /// The act.
    pub action: Option<Action>,
    /// Where it is done; nowhere when it is on the table of the kit or the meter.
    pub at: Option<Place>,
}

impl Next {
    /// An act at a place.
    pub fn at(stage: Stage, say: &'static str, at: Place, action: Action) -> Self {
        Self { stage, say, action: Some(action), at: Some(at) }
    }

    /// An act with what lies in the kit.
    pub fn kit(stage: Stage, say: &'static str, action: Action) -> Self {
        Self { stage, say, action: Some(action), at: None }
    }

    /// Nothing that was read says what is wrong.
    pub const fn unclear() -> Self {
        Self { stage: Stage::Named, say: "guide-unclear", action: None, at: None }
    }

    /// A reading with the leads.
    pub fn reading(
        stage: Stage,
        say: &'static str,
        at: Place,
        function: MeterFunction,
        points: [Screw; 2],
    ) -> Self {
        let [red, black] = points.map(Into::into);
        Self::at(stage, say, at, Action::Meter { function, red, black })
    }
}

/// What is next in a call.
pub fn next(call: Guided, session: &Session, known: &Known) -> Next {
    match call {
        Guided::First => limit::next(session, known),
        Guided::Second => element(session, known),
    }
}

/// What everything begins with: the people heard, power off and locked.
pub fn begin(session: &Session, known: &Known) -> Option<Next> {
    hear(session, known).or_else(|| off(session, known))
}

/// What is next where an element is looked for.
fn element(session: &Session, known: &Known) -> Next {
    let (level, evidence) = suspect(session);
    let find = || {
        begin(session, known)
            .or_else(|| prove::dead(session, level, &prove::screws(level)))
            .or_else(|| prove::element(session, level, evidence))
    };
    if mend::is_changed(session, level) {
        return mend::finish(session, known, level);
    }
    find().unwrap_or_else(|| mend::change(session, level))
}

/// The element to read: the upper one until it has read sound, then the lower one.
fn suspect(session: &Session) -> (Level, Option<Verdict>) {
    let read = |level| past::end_to_end(session, level).map(|(_, verdict)| verdict);
    match read(Level::Upper) {
        Some(Verdict::Sound) if past::changed(session, Level::Upper).0 == 0 => {
            (Level::Lower, read(Level::Lower))
        }
        upper => (Level::Upper, upper),
    }
}

fn hear(session: &Session, known: &Known) -> Option<Next> {
    let at = |say, place, action| Some(Next::at(Stage::Heard, say, place, action));
    if last(session, |act| matches!(act, Action::Ask { .. })) == 0 {
        return at("guide-ask", Place::Customer, Action::Ask { question: Question::LastGood });
    }
    if known.plate.is_none() {
        return at("guide-plate", Place::Customer, Action::Read { what: Writing::Plate });
    }
    if !session.me.household_told {
        return at("guide-tell", Place::Customer, Action::TellHousehold);
    }
    None
}

/// The heater's breaker, by the directory.
pub fn slot(known: &Known) -> Option<u32> {
    let at = known.labels.iter().position(|(feeds, _)| *feeds == Circuit::Heater)?;
    u32::try_from(at).ok()
}

/// Whether a breaker's handle was last seen at off. One that nobody has looked at may be on.
pub fn is_off(known: &Known, slot: u32) -> bool {
    known.handles.get(&slot) == Some(&plant::Handle::Off)
}

/// Whether the learner's lock hangs on a breaker.
pub fn is_locked(session: &Session, slot: u32) -> bool {
    session.home.plant.panel.breakers.get(slot as usize).is_some_and(|one| one.locked)
}

fn off(session: &Session, known: &Known) -> Option<Next> {
    let at = |stage, say, action| Some(Next::at(stage, say, Place::LoadCenter, action));
    let Some(slot) = slot(known) else {
        return at(Stage::Off, "guide-directory", Action::Read { what: Writing::Directory });
    };
    if !is_off(known, slot) {
        return at(Stage::Off, "guide-off", Action::Breaker { slot, on: false });
    }
    if !is_locked(session, slot) {
        return at(Stage::Locked, "guide-lock", Action::Lock { slot, on: true });
    }
    None
}
