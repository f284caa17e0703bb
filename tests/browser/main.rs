//! Everything that drives a browser. A new group of checks is a file here and a line below.
#![allow(clippy::panic, reason = "a test program: a failure here is the answer")]

mod announced;
mod away;
mod by_ear;
mod calls;
mod class;
mod economy;
mod first;
mod frames;
mod heaters;
mod identity;
mod legible;
mod opening;
mod practice;
mod printed;
mod sights;
mod slow;
mod sounds;
mod spanish;
mod speech;
mod tasks;
mod units;
mod unread;
mod waits;
mod whole_call;
mod work;
