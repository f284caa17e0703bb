//! The learner's paper: the job log, the suspects, the finding.

mod finding;
mod log;
mod pocket;
mod suspects;
mod take_back;

pub use finding::FindingForm;
pub use log::Log;
pub use pocket::PocketCard;
pub use suspects::Suspects;
