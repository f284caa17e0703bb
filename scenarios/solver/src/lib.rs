//! solver (see DEVELOPERS.md).

pub mod skin;
