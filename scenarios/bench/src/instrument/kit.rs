//! The specimens in the kit: each instrument's own error within its class, drawn once for a drill.

use quantity::Draw;
use serde::{Deserialize, Serialize};

use super::class::GUARD;

/// Where each instrument of the kit stands within its class, -1 to 1.
#[derive(Clone, Copy, PartialEq, Debug, Serialize, Deserialize)]
pub struct Kit {
    /// Volts of the meter, both impedances.
    pub volts: f64,
    /// Its resistance functions.
    pub ohms: f64,
    /// Its amperes jack.
    pub amps: f64,
    /// Insulation tester.
    pub insulation: f64,
    /// Clamp.
    pub clamp: f64,
    /// Thermometer.
    pub thermometer: f64,
    /// Pressure gauge.
    pub gauge: f64,
    /// Seed of what comes and goes: the contact of a worn lead.
    pub seed: u64,
}

impl Kit {
    /// A kit without error: for checks of the circuit itself, where an instrument's error would only blur what
    /// is checked.
    pub const EXACT: Self = Self {
        volts: 0.0,
        ohms: 0.0,
        amps: 0.0,
        insulation: 0.0,
        clamp: 0.0,
        thermometer: 0.0,
        gauge: 0.0,
        seed: 0,
    };

    /// The kit of a drill. Every instrument has its own stream, so that one more shifts none.
    pub fn drawn(seed: u64) -> Self {
        let error =
            |of: &str| Draw::new(seed, &format!("instrument {of}")).between(-GUARD.get(), GUARD.get());
        Self {
            volts: error("volts"),
            ohms: error("ohms"),
            amps: error("amperes"),
            insulation: error("insulation"),
            clamp: error("clamp"),
            thermometer: error("thermometer"),
            gauge: error("gauge"),
            seed,
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_specimen_keeps_its_class_and_its_error() {
        for seed in 0..500 {
            let kit = Kit::drawn(seed);
            assert_eq!(kit, Kit::drawn(seed));
            let all = [kit.volts, kit.ohms, kit.amps, kit.insulation, kit.clamp, kit.thermometer, kit.gauge];
            assert!(all.iter().all(|e| e.abs() <= GUARD.get()));
            assert!(all.iter().any(|e| e.abs() > 0.05));
        }
    }
}
