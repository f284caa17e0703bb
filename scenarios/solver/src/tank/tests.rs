//! Tests of the tank.
mod check_cases;
mod properties;
