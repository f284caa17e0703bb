//! Long computing away from the page: living through the days before a drill, judging a job. A worker with the same
//! module does it; where workers are unavailable the page does it itself, after saying so.

mod desk;
mod door;
mod fold;
mod pack;
mod task;
mod unpack;

pub use desk::{Asked, ask, prepare, stop};
pub use fold::fold;
pub use task::{Answer, Task};
