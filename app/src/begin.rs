//! From a drill as a link or a journal holds it to a job: the one place that knows how.

use std::rc::Rc;

use bench::Job;

use crate::compose::read_drill;
use crate::store::{Head, Msg, WorkHandle};

/// The job of a drill: its code, or the text of its file.
pub fn job(drill: &str) -> Result<Job, String> {
    let order = read_drill(drill)?;
    ::drill::make(&order).map(|made| made.job).map_err(|error| error.to_string())
}

/// Takes a new job. What was under way is given up.
pub fn begin(work: &WorkHandle, drill: &str, learner: &str) -> Result<(), String> {
    let job = Rc::new(job(drill)?);
    // Tells this attempt from any other on the device, and when it began for a limit by the wall clock.
    let attempt = format!("{:.0}", js_sys::Date::now());
    let head = Head { attempt, drill: drill.to_owned(), learner: learner.to_owned() };
    work.dispatch(Msg::Begun(head, job));
    Ok(())
}

/// A job to test with: a 40-gallon heater whose lower element is open.
#[cfg(test)]
pub fn example() -> Job {
    job(r#"{"seed": 7, "fault": "F01", "heater": "plain-40", "mode": "coached"}"#).unwrap()
}
