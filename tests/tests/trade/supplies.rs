//! Section 1: construction, control and the voltages to be read, over every kind of supply.
