//! Everything that drives a browser. A new group of checks is a file here and a line below.

mod calls;
mod identity;
mod opening;
mod whole_call;
mod work;
