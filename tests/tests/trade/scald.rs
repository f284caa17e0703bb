//! Section 8: burns by hot water.
