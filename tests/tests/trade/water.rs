//! Section 5: water, pressure, expansion, draining and filling.
