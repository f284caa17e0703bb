//! From a drill as a link or a journal holds it to a job: the one place that knows how.

use std::rc::Rc;

use ::drill::{Drill, Lived};
use yew::Callback;

use crate::away::{self, Answer, Asked, Task};
use crate::compose::read_drill;
use crate::store::{Head, Msg, WorkHandle};

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
            let head = Head { attempt, drill: drill.clone(), learner: learner.clone() };
            work.dispatch(Msg::Begun(head, made));
        }));
    };
    away::ask(task, Callback::from(answered))
}

/// A job to test with: a 40-gallon heater whose lower element is open.
#[cfg(test)]
pub fn example() -> bench::Job {
    let order = r#"{"seed": 7, "fault": "F01", "heater": "plain-40", "mode": "coached"}"#;
    ::drill::make(&read_drill(order).unwrap()).unwrap().job
}
