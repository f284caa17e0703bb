//! Waiting, a piece of time after another, so that whoever shows it can pause between them and stop it early. A wait
//! stopped after some pieces is the shorter wait, to the bit.

use std::borrow::Cow;

use quantity::{Constant, Seconds, Tag};

use super::turn::Turn;
use super::{Answered, log, settle, water};
use crate::action::Action;
use crate::session::Session;
use crate::shown::{Outcome, Refusal, Shown};

quantity::constants! {
    /// Longest wait asked for.
    const MOST_WAIT: Constant<Seconds> = Constant::of("longest wait asked for", Seconds::hours(24.0), Tag::Model("a day"));
    /// How much of it passes in one piece.
    const PIECE: Constant<Seconds> = Constant::of("piece in which a wait passes", Seconds::minutes(10.0), Tag::Model("short enough to stop"));
    /// Longest wait for the thermostats.
    const MOST_CUT_OUT: Constant<Seconds> = Constant::of("longest wait for the thermostats", Seconds::hours(4.0), Tag::Model("longer than any heater takes"));
    /// How often they are looked at meanwhile.
    const LOOK: Constant<Seconds> = Constant::of("how often they are looked at meanwhile", Seconds(60.0), Tag::Model("a minute is within the reading of a watch"));
}

/// What is waited for.
#[derive(Clone, Copy, Debug)]
enum Goal {
    /// A time.
    Time(Seconds),
    /// That no thermostat calls.
    CutOut,
}

impl Goal {
    /// How much passes next.
    fn piece(self, turn: &Turn, waited: Seconds) -> Option<Seconds> {
        match self {
            Self::Time(all) => (waited < all).then(|| Seconds(PIECE.get().get().min((all - waited).get()))),
            Self::CutOut => {
                (waited < MOST_CUT_OUT.get() && !turn.s.home.plant.is_satisfied()).then_some(LOOK.get())
            }
        }
    }

    fn most(self) -> Seconds {
        match self {
            Self::Time(all) => all,
            Self::CutOut => MOST_CUT_OUT.get(),
        }
    }
}

fn goal(action: &Action) -> Option<Goal> {
    match action {
        Action::Wait { minutes } => {
            let all = Seconds::minutes(*minutes);
            (all.get() > 0.0 && all <= MOST_WAIT.get()).then_some(Goal::Time(all))
        }
        Action::WaitForCutOut => Some(Goal::CutOut),
        _ => None,
    }
}

/// Lets time pass.
pub(super) fn wait(turn: &mut Turn, action: &Action) -> Answered {
    let goal = goal(action).ok_or(Refusal::OutOfRange)?;
    let mut waited = Seconds(0.0);
    while let Some(piece) = goal.piece(turn, waited) {
        turn.pass(piece);
        waited += piece;
    }
    Ok(Shown::DoneWith { sights: water::meanwhile(turn) })
}

/// A wait under way.
pub struct Waiting {
    turn: Turn<'static>,
    action: Action,
    goal: Goal,
    waited: Seconds,
}

impl Waiting {
    /// Begins to wait; `None` where the act is no wait, or none that the world lets pass.
    pub fn begin(session: &Session, action: &Action) -> Option<Self> {
        let goal = goal(action).filter(|_| session.ended.is_none())?;
        let turn = Turn::of(Cow::Owned(session.clone()));
        Some(Self { turn, action: action.clone(), goal, waited: Seconds(0.0) })
    }

    /// Waits a piece more. Whether there is more to come.
    pub fn go_on(&mut self) -> bool {
        if let Some(piece) = self.goal.piece(&self.turn, self.waited) {
            self.turn.pass(piece);
            self.waited += piece;
        }
        self.goal.piece(&self.turn, self.waited).is_some()
    }

    /// What the clock of the job shows by now.
    pub fn clock(&self) -> Seconds {
        self.turn.s.clock
    }

    /// How much of it is over, of the longest that it can be.
    pub fn share(&self) -> f64 {
        self.waited / self.goal.most()
    }

    /// The same stopped here: as long a wait as it has been. One for the thermostats becomes one by the clock, and has
    /// to be waited again. `None` where no time has passed.
    pub fn stopped(mut self) -> Option<Self> {
        let action = Action::Wait { minutes: self.waited.to_minutes() };
        let all = goal(&action)?;
        if matches!(self.goal, Goal::CutOut) {
            return Self::begin(&self.turn.before, &action);
        }
        (self.action, self.goal) = (action, all);
        Some(self)
    }

    /// Ends it, with whatever is left of it: what [`super::reduce`] makes of the act.
    pub fn end(mut self) -> (Session, Outcome) {
        while self.go_on() {}
        let shown = Shown::DoneWith { sights: water::meanwhile(&self.turn) };
        let before = self.turn.before.clone();
        let (next, outcome) = settle(&before, self.turn, shown);
        log(&before, next, &self.action, outcome)
    }
}
