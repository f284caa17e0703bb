//! Section 6: circuits sized by rule, ghost volts, breakers.
