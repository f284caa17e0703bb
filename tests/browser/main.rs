//! Everything that drives a browser. A new group of checks is a file here and a line below.

mod calls;
mod class;
mod identity;
mod opening;
mod sights;
mod slow;
mod whole_call;
mod work;
