//! From a drill as a link or a journal holds it to a job: the one place that knows how.

use std::rc::Rc;

use bench::Job;

use crate::demo;
use crate::store::{Head, Msg, WorkHandle};

/// The drill that a text stands for.
pub fn job(drill: &str) -> Result<Job, String> {
    match drill {
        demo::NAME => Ok(demo::job()),
        other => Err(other.chars().take(40).collect()),
    }
}

/// Takes a new job. What was under way is given up.
pub fn begin(work: &WorkHandle, drill: &str, learner: &str) -> Result<(), String> {
    let job = Rc::new(job(drill)?);
    let attempt = format!("{:.0}", js_sys::Date::now());
    let head = Head { attempt, drill: drill.to_owned(), learner: learner.to_owned() };
    work.dispatch(Msg::Begun(head, job));
    Ok(())
}
