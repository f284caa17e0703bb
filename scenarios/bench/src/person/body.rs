//! The body as a branch of the circuit: impedance by touch voltage, population, wetness and path.
