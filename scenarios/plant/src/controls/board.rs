//! The board of an electronic heater: reads two thermistors through dividers, drives two relays, locks heating
//! out in plain words.

use quantity::{Constant, Kelvins, Ohms, Tag, Temperature, det};
use serde::{Deserialize, Serialize};

use crate::Level;
use crate::named::named;

quantity::constants! {
    /// Resistance of a thermistor at its reference temperature.
    pub const AT_REFERENCE: Constant<Ohms> = Constant::of(
        "thermistor at 25 °C",
        Ohms(10_000.0),
        Tag::Computed("model curve of trade sheet 1.12; a published table of a common sensor agrees within a few %"),
    );
    /// That temperature.
    pub const REFERENCE: Constant<Temperature> =
        Constant::of("reference of a thermistor", Temperature::celsius(25.0), Tag::Computed("trade sheet 1.12"));
    /// How steeply it falls.
    pub const BETA: Constant<Kelvins> =
        Constant::of("beta of a thermistor", Kelvins(3934.0), Tag::Computed("trade sheet 1.12"));
    /// The other resistor of the divider.
    const DIVIDER: Constant<Ohms> = Constant::of(
        "divider beside a thermistor",
        Ohms(10_000.0),
        Tag::Model("as large as the sensor at room temperature: finest in the middle of the range"),
    );
    /// Steps of the board's converter.
    const STEPS: Constant = Constant::new("steps of the converter", 1024.0, "", Tag::Model("ten bits"));
    /// Share of the supply above which a sensor counts as open.
    const OPEN_ABOVE: Constant = Constant::new(
        "share of the supply that means an open sensor",
        0.98,
        "",
        Tag::Model("490 kilohms: colder than any water can be"),
    );
    /// Share of the supply below which a sensor counts as shorted.
    const SHORT_BELOW: Constant = Constant::new(
        "share of the supply that means a shorted sensor",
        0.02,
        "",
        Tag::Model("200 ohms: 150 °C and more"),
    );
    /// Reading at which heating locks out.
    pub const TOO_HOT: Constant<Temperature> = Constant::of(
        "reading that locks heating out",
        Temperature::fahrenheit(165.0),
        Tag::Model("above the highest setting, below the 170 °F of the limit that stands behind it"),
    );
    /// The setting from the factory.
    const SETTING: Constant<Temperature> = Constant::of(
        "setting of a board from the factory",
        Temperature::fahrenheit(120.0),
        Tag::Published("two owner's manuals (trade sheet 3.2)"),
    );
    /// Reading below the setting at which it heats again.
    const DIFFERENTIAL: Constant<Kelvins> = Constant::of(
        "differential of a board",
        Kelvins::fahrenheit(8.0),
        Tag::Memory("trade sheet 3.3: typical field 8-20 °F, a board's at the lower end"),
    );
}

/// Resistance of a sound thermistor at a temperature.
pub fn thermistor(at: Temperature) -> Ohms {
    let over = 1.0 / at.get().max(1.0) - 1.0 / REFERENCE.get().get();
    Ohms(AT_REFERENCE.get().get() * det::exp(BETA.get().get() * over))
}

/// The temperature at which a sound thermistor has a resistance.
fn temperature_of(resistance: Ohms) -> Temperature {
    let share = det::ln(resistance.get() / AT_REFERENCE.get().get());
    Temperature(1.0 / (1.0 / REFERENCE.get().get() + share / BETA.get().get()))
}

/// How a sensor or its lead is.
#[derive(Clone, Copy, PartialEq, Eq, Debug, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Lead {
    /// Whole.
    Whole,
    /// Broken.
    Broken,
    /// Pinched: its two wires touch.
    Shorted,
}

/// A thermistor on the tank's wall with its lead and plug.
#[derive(Clone, Copy, PartialEq, Debug, Serialize, Deserialize)]
pub struct Sensor {
    /// Its resistance over that of a sound one at the same temperature.
    pub drift: f64,
    /// Its lead.
    pub lead: Lead,
    /// Its plug sits in the board.
    pub plugged: bool,
}

impl Sensor {
    /// A sound one in its place.
    pub const SOUND: Self = Self { drift: 1.0, lead: Lead::Whole, plugged: true };

    /// Resistance between the two pins of its plug; infinite where its lead is broken.
    pub fn resistance(&self, body: Temperature) -> Ohms {
        match self.lead {
            Lead::Whole => thermistor(body) * self.drift,
            Lead::Broken => Ohms(f64::INFINITY),
            Lead::Shorted => Ohms(0.0),
        }
    }
}

/// What the board makes of a sensor.
#[derive(Clone, Copy, PartialEq, Debug)]
pub enum Reading {
    /// A temperature.
    Is(Temperature),
    /// Nothing there.
    Open,
    /// Nothing but a short.
    Shorted,
}

named! {
    /// Why a board does not heat.
    Lockout {
        /// The upper sensor reads open.
        UpperOpen = "upper sensor open",
        /// The lower sensor reads open.
        LowerOpen = "lower sensor open",
        /// The upper sensor reads shorted.
        UpperShorted = "upper sensor shorted",
        /// The lower sensor reads shorted.
        LowerShorted = "lower sensor shorted",
        /// A sensor read above what water may be.
        TooHot = "water too hot",
        /// No water at the upper element.
        NoWater = "no water over the element",
        /// Water in the tray.
        Leak = "water in the tray",
    }
}

named! {
    /// How the contact of a relay is.
    Relay {
        /// Follows its coil.
        Works = "works",
        /// Welded closed.
        StuckClosed = "stuck closed",
        /// Never makes.
        StuckOpen = "stuck open",
    }
}

/// What the board finds around it at one moment.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct Sensed {
    /// Its own supply is there.
    pub powered: bool,
    /// Temperatures of the sensors' bodies, upper and lower.
    pub bodies: [Temperature; 2],
    /// Water stands at the upper element.
    pub water: bool,
    /// The tray is wet.
    pub tray_wet: bool,
}

/// A control board.
#[derive(Clone, Copy, PartialEq, Debug, Serialize, Deserialize)]
pub struct Board {
    /// What it heats to.
    pub setting: Temperature,
    /// Upper and lower sensor.
    pub sensors: [Sensor; 2],
    /// Relays of the upper and the lower element.
    pub relays: [Relay; 2],
    /// Which zone it wants heated.
    pub calls: [bool; 2],
    /// Why it does not heat; kept until its supply is taken away.
    pub lockout: Option<Lockout>,
}

impl Board {
    /// A sound one.
    pub const fn sound() -> Self {
        Self {
            setting: SETTING.get(),
            sensors: [Sensor::SOUND; 2],
            relays: [Relay::Works; 2],
            calls: [false; 2],
            lockout: None,
        }
    }

    /// What it makes of a sensor: the voltage over it in a divider, in the steps of its converter.
    pub fn reads(&self, level: Level, body: Temperature) -> Reading {
        let Some(sensor) = self.sensors.get(level.index()).filter(|s| s.plugged) else {
            return Reading::Open;
        };
        let resistance = sensor.resistance(body).get();
        let share =
            if resistance.is_finite() { resistance / (resistance + DIVIDER.get().get()) } else { 1.0 };
        let share = (share * STEPS.get()).round() / STEPS.get();
        if share >= OPEN_ABOVE.get() {
            Reading::Open
        } else if share <= SHORT_BELOW.get() {
            Reading::Shorted
        } else {
            Reading::Is(temperature_of(Ohms(DIVIDER.get().get() * share / (1.0 - share))))
        }
    }

    /// Takes note of what it senses: locks out, calls, stops calling. Returns whether a relay moved.
    pub fn decide(&mut self, sensed: Sensed) -> bool {
        let before = [0, 1].map(|relay| self.closed(relay));
        if !sensed.powered {
            (self.calls, self.lockout) = ([false; 2], None);
            return before != [0, 1].map(|relay| self.closed(relay));
        }
        let readings =
            [Level::Upper, Level::Lower].map(|level| self.reads(level, sensed.bodies[level.index()]));
        self.lockout = self.lockout.or(match readings {
            [Reading::Open, _] => Some(Lockout::UpperOpen),
            [_, Reading::Open] => Some(Lockout::LowerOpen),
            [Reading::Shorted, _] => Some(Lockout::UpperShorted),
            [_, Reading::Shorted] => Some(Lockout::LowerShorted),
            [Reading::Is(upper), Reading::Is(lower)] if upper >= TOO_HOT.get() || lower >= TOO_HOT.get() => {
                Some(Lockout::TooHot)
            }
            _ if !sensed.water => Some(Lockout::NoWater),
            _ if sensed.tray_wet => Some(Lockout::Leak),
            _ => None,
        });
        for (call, reading) in self.calls.iter_mut().zip(readings) {
            let Reading::Is(celsius) = reading else { continue };
            if celsius >= self.setting {
                *call = false;
            } else if celsius.get() <= self.setting.get() - DIFFERENTIAL.get().get() {
                *call = true;
            }
        }
        if self.lockout.is_some() {
            self.calls = [false; 2];
        }
        before != [0, 1].map(|relay| self.closed(relay))
    }

    /// Whether a relay's contact stands closed: one at a time, the upper element's first.
    pub fn closed(&self, relay: usize) -> bool {
        let driven = match relay {
            0 => self.calls[0],
            _ => self.calls[1] && !self.calls[0],
        };
        match self.relays.get(relay) {
            Some(Relay::Works) => driven,
            Some(Relay::StuckClosed) => true,
            Some(Relay::StuckOpen) | None => false,
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    const fn f(fahrenheit: f64) -> Temperature {
        Temperature::fahrenheit(fahrenheit)
    }

    fn sensed(upper: f64, lower: f64) -> Sensed {
        Sensed { powered: true, bodies: [f(upper), f(lower)], water: true, tray_wet: false }
    }

    #[test]
    fn heats_the_top_first_and_one_at_a_time() {
        let mut board = Board::sound();
        assert!(board.decide(sensed(60.0, 60.0)));
        assert_eq!([board.closed(0), board.closed(1)], [true, false]);
        assert!(board.decide(sensed(121.0, 60.0)));
        assert_eq!([board.closed(0), board.closed(1)], [false, true]);
        assert!(board.decide(sensed(121.0, 121.0)));
        assert_eq!([board.closed(0), board.closed(1)], [false, false]);
        assert!(!board.decide(sensed(115.0, 115.0)), "within the differential");
        assert!(board.decide(sensed(115.0, 111.0)));
    }

    #[test]
    fn reads_within_a_degree_over_its_range() {
        let board = Board::sound();
        for degrees in 34..180 {
            let body = f(f64::from(degrees));
            let Reading::Is(read) = board.reads(Level::Lower, body) else { panic!("{degrees}") };
            assert!(read.above(body).to_fahrenheit().abs() < 1.0, "{degrees}: {}", read.to_fahrenheit());
        }
    }

    /// Trade sheet 1.12 (existence published: codes for open or short sensor, over-temperature, dry fire and leak
    /// lock heating out). All of them until the supply is taken away.
    #[test]
    fn locks_out_in_plain_words() {
        let sound = sensed(60.0, 60.0);
        type Spoil = fn(&mut Board, &mut Sensed);
        let cases: [(Lockout, Spoil); 8] = [
            (Lockout::UpperOpen, |b, _| b.sensors[0].plugged = false),
            (Lockout::UpperOpen, |b, _| b.sensors[0].lead = Lead::Broken),
            (Lockout::LowerOpen, |b, _| b.sensors[1].lead = Lead::Broken),
            (Lockout::UpperShorted, |b, _| b.sensors[0].lead = Lead::Shorted),
            (Lockout::LowerShorted, |b, _| b.sensors[1].lead = Lead::Shorted),
            (Lockout::TooHot, |_, s| s.bodies[0] = f(168.0)),
            (Lockout::NoWater, |_, s| s.water = false),
            (Lockout::Leak, |_, s| s.tray_wet = true),
        ];
        for (lockout, spoil) in cases {
            let (mut board, mut now) = (Board::sound(), sound);
            board.decide(now);
            assert!(board.closed(0));
            spoil(&mut board, &mut now);
            board.decide(now);
            assert_eq!(board.lockout, Some(lockout));
            assert!(!board.closed(0) && !board.closed(1));
            board.sensors = [Sensor::SOUND; 2];
            board.decide(sound);
            assert_eq!(board.lockout, Some(lockout), "it stays");
            board.decide(Sensed { powered: false, ..sound });
            board.decide(sound);
            assert_eq!(board.lockout, None);
            assert!(board.closed(0), "and heats again");
        }
    }

    /// Trade sheet 9, F60 (common practice, no source): a sensor over 10 % off its curve; F61: a stuck relay heats
    /// with no call, a dead one never.
    #[test]
    fn drifted_sensors_and_bad_relays() {
        let mut board = Board::sound();
        board.sensors = [Sensor { drift: 1.2, ..Sensor::SOUND }; 2];
        board.decide(sensed(122.0, 122.0));
        board.decide(sensed(124.0, 124.0));
        let Reading::Is(read) = board.reads(Level::Upper, f(124.0)) else { panic!() };
        assert!(read < f(118.0), "too high a resistance reads cold and overheats: {}", read.to_fahrenheit());
        let mut board = Board { relays: [Relay::StuckClosed, Relay::StuckOpen], ..Board::sound() };
        board.decide(sensed(130.0, 60.0));
        assert_eq!([board.closed(0), board.closed(1)], [true, false]);
        board.decide(Sensed { powered: false, ..sensed(130.0, 60.0) });
        assert!(board.closed(0), "a welded contact needs no coil");
    }
}
