//! The learner's paper: the job log, the suspects, the finding.

mod finding;
mod log;
mod suspects;

pub use finding::FindingForm;
pub use log::Log;
pub use suspects::Suspects;
