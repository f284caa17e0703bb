//! Section 3: thermostats and the limit.
