//! Readings of a healthy and of a faulty heater against the trade's tables.

mod cases;
mod readings;
mod sheath_faults;
mod wiring;

use quantity::{Amps, Ohms, Temperature, Volts};

use super::Bridge;
use super::fixtures::{LOW, METER, blades, ideal, lift, near, plant, reading, stiff};
use crate::supply::{Breaker, Circuit, ServiceKind};
use crate::{Contact, Element, End, Plant, Screw, Wire};
