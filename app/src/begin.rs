//! From a drill as a link or a journal holds it to a job: the one place that knows how.

use std::rc::Rc;

use ::drill::Drill;

use crate::compose::read_drill;
use crate::store::{Head, Msg, WorkHandle};

/// The drill of a code, or of the text of a file. Lives through the household's week.
pub fn deal(drill: &str) -> Result<Rc<Drill>, String> {
    let order = read_drill(drill)?;
    ::drill::make(&order).map(Rc::new).map_err(|error| crate::text::order_error(&error))
}

/// Takes a new job. What was under way is given up.
pub fn begin(work: &WorkHandle, drill: &str, learner: &str) -> Result<(), String> {
    let dealt = deal(drill)?;
    // Tells this attempt from any other on the device, and when it began for a limit by the wall clock.
    let attempt = format!("{:.0}", js_sys::Date::now());
    let head = Head { attempt, drill: drill.to_owned(), learner: learner.to_owned() };
    work.dispatch(Msg::Begun(head, dealt));
    Ok(())
}

/// A job to test with: a 40-gallon heater whose lower element is open.
#[cfg(test)]
pub fn example() -> bench::Job {
    deal(r#"{"seed": 7, "fault": "F01", "heater": "plain-40", "mode": "coached"}"#).unwrap().job.clone()
}
