//! Section 7: current through a body.
