//! Section 4: heat, recovery, standby and the water main's temperature.
