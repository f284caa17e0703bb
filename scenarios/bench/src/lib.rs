//! bench (see DEVELOPERS.md).
