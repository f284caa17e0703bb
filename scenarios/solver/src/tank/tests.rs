//! Tests of the tank.
mod check_cases;
mod ports;
mod properties;
