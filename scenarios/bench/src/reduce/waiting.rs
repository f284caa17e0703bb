//! Waiting, a piece of time after another, so that whoever shows it can pause between them and stop it early. A wait
//! stopped after some pieces is the shorter wait, to the bit.

use std::borrow::Cow;

use plant::home::Home;
use quantity::{Constant, Seconds, Tag};

use super::living::People;
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
    /// A time, in which the people of the house do as they always do.
    Living(Seconds),
    /// That no thermostat calls.
    CutOut,
}

impl Goal {
    /// How much passes next, at most.
    fn piece(self, turn: &Turn, waited: Seconds) -> Option<Seconds> {
        match self {
            Self::Time(all) | Self::Living(all) => {
                (waited < all).then(|| Seconds(PIECE.get().get().min((all - waited).get())))
            }
            Self::CutOut => {
                (waited < MOST_CUT_OUT.get() && !turn.s.home.plant.is_satisfied()).then_some(LOOK.get())
            }
        }
    }

    fn most(self) -> Seconds {
        match self {
            Self::Time(all) | Self::Living(all) => all,
            Self::CutOut => MOST_CUT_OUT.get(),
        }
    }
}

fn goal(action: &Action) -> Option<Goal> {
    let some = |minutes: f64| {
        let all = Seconds::minutes(minutes);
        (all.get() > 0.0 && all <= MOST_WAIT.get()).then_some(all)
    };
    match action {
        Action::Wait { minutes } => some(*minutes).map(Goal::Time),
        Action::LetThemUse { minutes } => some(*minutes).map(Goal::Living),
        Action::WaitForCutOut => Some(Goal::CutOut),
        _ => None,
    }
}

/// How far a wait has come.
struct Course {
    goal: Goal,
    waited: Seconds,
    people: Option<People>,
}

impl Course {
    fn begin(turn: &Turn, goal: Goal) -> Self {
        let people = matches!(goal, Goal::Living(_)).then(|| People::from_now(turn, goal.most()));
        Self { goal, waited: Seconds(0.0), people }
    }

    /// Waits a piece more. Whether there is more to come.
    fn go_on(&mut self, turn: &mut Turn) -> bool {
        if let Some(most) = self.goal.piece(turn, self.waited) {
            let piece = self.people.as_mut().map_or(most, |people| people.go(turn, most));
            turn.lived = self.people.is_some();
            turn.pass(piece);
            self.waited += piece;
            if let Some(people) = &mut self.people {
                people.feel(turn, piece);
            }
        }
        self.goal.piece(turn, self.waited).is_some()
    }

    /// What is seen at its end, when whoever is at a tap has shut it.
    fn end(&mut self, turn: &mut Turn) -> Shown {
        let mut sights = water::meanwhile(turn);
        if let Some(people) = &mut self.people {
            people.done(turn);
            sights.extend_from_slice(people.told());
        }
        Shown::DoneWith { sights }
    }
}

/// Lets time pass.
pub(super) fn wait(turn: &mut Turn, action: &Action) -> Answered {
    let mut course = Course::begin(turn, goal(action).ok_or(Refusal::OutOfRange)?);
    while course.go_on(turn) {}
    Ok(course.end(turn))
}

/// A wait under way.
pub struct Waiting {
    turn: Turn<'static>,
    action: Action,
    course: Course,
}

impl Waiting {
    /// Begins to wait; `None` where the act is no wait, or none that the world lets pass.
    pub fn begin(session: &Session, action: &Action) -> Option<Self> {
        let goal = goal(action).filter(|_| session.ended.is_none())?;
        let turn = Turn::of(Cow::Owned(session.clone()));
        let course = Course::begin(&turn, goal);
        Some(Self { turn, action: action.clone(), course })
    }

    /// Waits a piece more. Whether there is more to come.
    pub fn go_on(&mut self) -> bool {
        self.course.go_on(&mut self.turn)
    }

    /// The house by now.
    pub fn home(&self) -> &Home {
        &self.turn.s.home
    }

    /// What the clock of the job shows by now.
    pub fn clock(&self) -> Seconds {
        self.turn.s.clock
    }

    /// How much of it is over, of the longest that it can be.
    pub fn share(&self) -> f64 {
        self.course.waited / self.course.goal.most()
    }

    /// The same stopped here: as long a wait as it has been. One for the thermostats becomes one by the clock; that and
    /// one in which people live have to be waited again. `None` where no time has passed.
    pub fn stopped(mut self) -> Option<Self> {
        let minutes = self.course.waited.to_minutes();
        let living = matches!(self.course.goal, Goal::Living(_));
        let action = if living { Action::LetThemUse { minutes } } else { Action::Wait { minutes } };
        let all = goal(&action)?;
        if !matches!(self.course.goal, Goal::Time(_)) {
            return Self::begin(&self.turn.before, &action);
        }
        (self.action, self.course.goal) = (action, all);
        Some(self)
    }

    /// Ends it, with whatever is left of it: what [`super::reduce`] makes of the act.
    pub fn end(mut self) -> (Session, Outcome) {
        while self.go_on() {}
        let shown = self.course.end(&mut self.turn);
        let before = self.turn.before.clone();
        let (next, outcome) = settle(&before, self.turn, shown);
        log(&before, next, &self.action, outcome)
    }
}
