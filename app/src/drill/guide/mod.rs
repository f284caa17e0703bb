//! The guide of the first two calls: which stage the job is at, and the next thing to do with its reason. It is worked out
//! anew from the session after each act, so that it fits whatever the learner did; it knows nothing of what is wrong
//! with the heater but what the readings say.

mod card;
mod hand;
mod limit;
mod mend;
mod next;
mod past;
mod prove;
mod stage;
#[cfg(test)]
mod tests;

pub use card::{GuideCard, GuideSwitch};
pub use next::{Next, next};
pub use stage::{Guided, Stage};
