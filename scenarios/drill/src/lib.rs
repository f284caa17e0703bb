//! drill (see DEVELOPERS.md).
