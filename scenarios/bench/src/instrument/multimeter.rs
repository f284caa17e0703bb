//! The multimeter: 6000 counts, true RMS, two jacks for the red lead.
//!
//! The class figures are those that handheld meters of this size commonly carry in their data sheets; no
//! standard sets them. With the red lead in the amperes jack the meter is a near short between its probes,
//! whatever its dial says, until its fuse opens; after that it is nothing at all, and its volts read zero on a
//! live circuit.

use quantity::{Constant, Tag};

use super::class::{Class, Range, Scale};

quantity::constants! {
    /// Input of the volts function.
    pub const INPUT: Constant =
        Constant::new("meter input", 10e6, "ohm", Tag::Computed("the input of common handheld meters, behind the expected readings"));
    /// Capacitance beside it, with the leads.
    pub const INPUT_CAPACITANCE: Constant =
        Constant::new("meter input capacitance", 100e-12, "F", Tag::CommonPractice);
    /// Both leads in series, with their tips.
    pub const LEADS: Constant = Constant::new(
        "leads",
        0.3,
        "ohm",
        Tag::Published("0.1 to 0.3 ohm: a maker's manual on resistance measurement"),
    );
    /// Below this the continuity tone sounds.
    pub const TONE: Constant = Constant::new("continuity tone", 30.0, "ohm", Tag::CommonPractice);
    /// Shunt and fuse of the amperes jack, leads left out.
    pub const SHUNT: Constant = Constant::new("ampere shunt and fuse", 0.03, "ohm", Tag::CommonPractice);
    /// Rating of the fuse in the amperes jack.
    pub const FUSE: Constant = Constant::new("meter fuse", 11.0, "A", Tag::CommonPractice);
    /// Let-through of that fuse: squared amperes times seconds until it opens.
    pub const FUSE_I2T: Constant = Constant::new(
        "meter fuse I2t",
        500.0,
        "A2 s",
        Tag::Model("order of magnitude of a high-rupturing 11 A fuse; real ones 300 to 900"),
    );
    /// Voltage from which the resistance functions are upset.
    pub const UPSET: Constant = Constant::new("upsets ohms", 1.0, "V", Tag::CommonPractice);
    /// Voltage from which the fuse behind the resistance functions goes.
    pub const BLOWS: Constant =
        Constant::new("blows the fuse behind ohms", 50.0, "V", Tag::Memory("makers' warnings: a false reading or a blown fuse"));
    /// Use left on a fresh battery.
    pub const BATTERY: Constant = Constant::new("fresh battery", 200.0 * 3600.0, "s", Tag::CommonPractice);
    /// The low-battery sign stands from here.
    pub const LOW_BATTERY: Constant = Constant::new(
        "low-battery sign",
        15.0 * 60.0,
        "s",
        Tag::Model("a short end, so that a drill can meet it"),
    );
    /// From here readings rise, as the reference falls with the battery.
    pub const FALSE_BATTERY: Constant =
        Constant::new("battery too low to trust", 5.0 * 60.0, "s", Tag::Model("as the sign, shorter"));
    /// How far they have risen when the display goes dark.
    pub const FALSE_BY: Constant = Constant::new(
        "rise of readings on a flat battery",
        0.08,
        "1",
        Tag::Model("makers warn of false readings under the sign and print no figure"),
    );
    /// An intermittent lead makes contact in this share of readings.
    pub const CONTACT: Constant =
        Constant::new("contact of an intermittent lead", 0.6, "1", Tag::Model("more often than not"));
}

const VOLTS: [Range; 4] = [
    Range { unit: "V", size: 1.0, top: 5.999, decimals: 3 },
    Range { unit: "V", size: 1.0, top: 59.99, decimals: 2 },
    Range { unit: "V", size: 1.0, top: 599.9, decimals: 1 },
    Range { unit: "V", size: 1.0, top: 1000.0, decimals: 0 },
];
/// Volts AC.
pub const AC_VOLTS: Scale = Scale {
    name: "V AC",
    ranges: &VOLTS,
    class: Class { percent: 1.0, digits: 3.0, tag: Tag::CommonPractice },
    least: Constant::new("least volts shown", 0.01, "V", Tag::CommonPractice),
    settles: Constant::new("volts settle", 1.0, "s", Tag::CommonPractice),
};
/// Volts AC at low impedance.
pub const LOW_VOLTS: Scale = Scale {
    name: "V AC low impedance",
    class: Class { percent: 2.0, digits: 3.0, tag: Tag::CommonPractice },
    ..AC_VOLTS
};
/// Amperes AC through the jack.
pub const AMPS: Scale = Scale {
    name: "A AC",
    ranges: &[
        Range { unit: "A", size: 1.0, top: 5.999, decimals: 3 },
        Range { unit: "A", size: 1.0, top: 20.0, decimals: 2 },
    ],
    class: Class { percent: 1.5, digits: 3.0, tag: Tag::CommonPractice },
    least: Constant::new("least amperes shown", 0.01, "A", Tag::CommonPractice),
    settles: Constant::new("amperes settle", 1.0, "s", Tag::CommonPractice),
};
/// Ohms.
pub const OHMS: Scale = Scale {
    name: "ohms",
    ranges: &[
        Range { unit: "Ω", size: 1.0, top: 599.9, decimals: 1 },
        Range { unit: "kΩ", size: 1e3, top: 5.999, decimals: 3 },
        Range { unit: "kΩ", size: 1e3, top: 59.99, decimals: 2 },
        Range { unit: "kΩ", size: 1e3, top: 599.9, decimals: 1 },
        Range { unit: "MΩ", size: 1e6, top: 5.999, decimals: 3 },
        Range { unit: "MΩ", size: 1e6, top: 40.0, decimals: 2 },
    ],
    class: Class { percent: 0.9, digits: 3.0, tag: Tag::CommonPractice },
    least: Constant::new("least ohms shown", 0.05, "ohm", Tag::CommonPractice),
    settles: Constant::new(
        "ohms settle on the highest range",
        8.0,
        "s",
        Tag::Published("several seconds above 1 megohm: a maker's manual on resistance measurement"),
    ),
};

/// What a falling battery makes of a reading: a factor, 1 on a good one.
pub fn battery_factor(left: f64) -> f64 {
    let gone = 1.0 - left / FALSE_BATTERY.get();
    1.0 + FALSE_BY.get() * gone.clamp(0.0, 1.0)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn figures_as_on_the_display() {
        let shown = |scale: &Scale, v| {
            scale.read(v, 0.0).and_then(|r| scale.figures(r)).map(|f| format!("{} {}", f.number, f.unit))
        };
        assert_eq!(shown(&AC_VOLTS, 240.04).as_deref(), Some("240.0 V"));
        assert_eq!(shown(&AC_VOLTS, 0.003).as_deref(), Some("0.000 V"));
        assert_eq!(shown(&AC_VOLTS, 26.337).as_deref(), Some("26.34 V"));
        assert_eq!(shown(&OHMS, 12.84).as_deref(), Some("12.8 Ω"));
        assert_eq!(shown(&OHMS, 20_130.0).as_deref(), Some("20.13 kΩ"));
        assert_eq!(shown(&OHMS, 39.999e6).as_deref(), Some("40.00 MΩ"));
        assert_eq!(shown(&OHMS, 41e6), None);
    }

    #[test]
    fn a_falling_battery_only_raises() {
        assert_eq!(battery_factor(BATTERY.get()), 1.0);
        assert_eq!(battery_factor(FALSE_BATTERY.get()), 1.0);
        assert!(battery_factor(60.0) > 1.05 && battery_factor(0.0) <= 1.081);
    }
}
