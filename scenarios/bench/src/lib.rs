//! bench (see DEVELOPERS.md).

pub mod person;
