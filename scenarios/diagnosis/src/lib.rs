//! diagnosis (see DEVELOPERS.md).
