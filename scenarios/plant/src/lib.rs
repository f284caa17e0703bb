//! plant (see DEVELOPERS.md).
