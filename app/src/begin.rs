//! From a drill as a link or a journal holds it to a job: the one place that knows how.

use std::rc::Rc;

use ::drill::{Drill, Lived, Practice};
use bench::{Entry, Mode, Session, Shown};
use yew::Callback;

use crate::away::{self, Answer, Asked, Task};
use crate::compose::read_drill;
use crate::store::{Head, Msg, Running, WorkHandle};
use crate::turns::Turns;

/// The drill of a code, or of the text of a file, after the days that its household lived through.
pub fn dealt(drill: &str, lived: Lived) -> Result<Rc<Drill>, String> {
    let made = Drill::after(&read_drill(drill)?, lived);
    made.map(Rc::new).map_err(|error| crate::text::order_error(&error))
}

/// Takes a new job, once its drill is dealt. What was under way is given up. Told whether it could be.
pub fn begin(work: &WorkHandle, drill: &str, learner: &str, told: Callback<Result<(), String>>) -> Asked {
    let (work, drill, learner) = (work.dispatcher(), drill.to_owned(), learner.to_owned());
    let task = Task::Live(drill.clone());
    let answered = move |answer| {
        let made = match answer {
            Answer::Lived(lived) => dealt(&drill, *lived),
            Answer::Failed(why) => Err(why),
            // Only days answer this question.
            _ => return,
        };
        told.emit(made.map(|made| {
            // Tells this attempt from any other on the device, and when it began for a limit by the wall clock.
            let attempt = format!("{:.0}", js_sys::Date::now());
            let head = Head { attempt, drill: drill.clone(), learner: learner.clone(), ..Head::default() };
            work.dispatch(Msg::Begun(head, made));
        }));
    };
    away::ask(task, Callback::from(answered))
}

/// Goes on from an act of the job that is over, as practice. Told when it is on the page.
pub fn again_from(work: &WorkHandle, step: u32, told: Callback<()>) -> Option<Turns> {
    let running = work.running.as_ref()?;
    let practice = Practice { carried: step, ..running.head.practice };
    let attempt = format!("{:.0}", js_sys::Date::now());
    Some(rewind(work, running, Head { attempt, practice, ..running.head.clone() }, step as usize, told))
}

/// Takes the last act back. Told when it is on the page; `None` where nothing can be taken back.
pub fn take_back(work: &WorkHandle, told: Callback<()>) -> Option<Turns> {
    let running = work.running.as_ref().filter(|running| may_take_back(&running.session))?;
    let mut head = running.head.clone();
    head.practice.taken_back = head.practice.taken_back.saturating_add(1);
    let kept = running.session.log.len().saturating_sub(1);
    head.practice.carried = head.practice.carried.min(kept as u32);
    Some(rewind(work, running, head, kept, told))
}

/// Whether the last act can be taken back: the coach is there, and did not stop it, for that stays counted.
pub fn may_take_back(session: &Session) -> bool {
    let stopped = |entry: &Rc<Entry>| matches!(entry.outcome.shown, Shown::Stopped { .. });
    session.job.mode == Mode::Coached
        && session.ended.is_none()
        && session.log.last().is_some_and(|entry| !stopped(entry))
}

/// Folds the first acts again under another head.
fn rewind(work: &WorkHandle, running: &Running, head: Head, kept: usize, told: Callback<()>) -> Turns {
    let actions = running.session.log.iter().take(kept).map(|entry| entry.action.clone()).collect();
    let work = work.dispatcher();
    let drill = running.drill.clone();
    let folded = Callback::from(move |session: Session| {
        let (restored, session) = (session.log.len(), session.into());
        let running = Running { head: head.clone(), drill: drill.clone(), session, restored, found: false };
        work.dispatch(Msg::Rewound(running));
        told.emit(());
    });
    away::fold(&running.drill, actions, folded)
}

/// A job to test with: a 40-gallon heater whose lower element is open.
#[cfg(test)]
pub fn example() -> bench::Job {
    let order = r#"{"seed": 7, "fault": "F01", "heater": "plain-40", "mode": "coached"}"#;
    ::drill::make(&read_drill(order).unwrap()).unwrap().job
}

#[cfg(test)]
mod tests {
    use super::*;
    use bench::{Action, Cover, Touchable};
    use plant::{Point, Screw};

    #[test]
    fn what_the_coach_stopped_stays_counted() {
        let mut session = Session::begin(example());
        assert!(!may_take_back(&session));
        for which in [Cover::Lower, Cover::LowerInsulation, Cover::LowerShield] {
            session.step(&Action::Cover { which, off: true });
        }
        assert!(may_take_back(&session));
        let point = Point::Screw(Screw::D1);
        session.step(&Action::Touch { at: Touchable::Metal { point } });
        assert_eq!(session.me.stops, 1);
        assert!(!may_take_back(&session));
        session.step(&Action::TellHousehold);
        assert!(may_take_back(&session));
    }
}
