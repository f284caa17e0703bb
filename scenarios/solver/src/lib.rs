//! solver (see DEVELOPERS.md).
