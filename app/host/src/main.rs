//! The native program: build, serve, trace, grade.
fn main() {}
