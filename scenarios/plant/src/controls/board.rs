//! The board of an electronic heater: reads two thermistors through dividers, drives two relays, locks heating
//! out in plain words.

use quantity::{Constant, Kelvins, Ohms, Tag, Temperature, Volts, Volume, det};
use serde::{Deserialize, Serialize};

use crate::electrical::Live;
use crate::named::named;
use crate::{Level, Plant, Screw};

quantity::constants! {
    /// Resistance of a thermistor at its reference temperature.
    pub const AT_REFERENCE: Constant<Ohms> = Constant::of(
        "thermistor at 25 °C",
        Ohms(10_000.0),
        Tag::Computed("model curve of a common sensor; one published table agrees within a few %"),
    );
    /// That temperature.
    pub const REFERENCE: Constant<Temperature> =
        Constant::of("reference of a thermistor", Temperature::celsius(25.0), Tag::Computed("a common sensor of this kind: 10 kΩ at 25 °C, beta 3934 K"));
    /// How steeply it falls.
    pub const BETA: Constant<Kelvins> =
        Constant::of("beta of a thermistor", Kelvins(3934.0), Tag::Computed("a common sensor of this kind: 10 kΩ at 25 °C, beta 3934 K"));
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
    /// Least voltage a board works with.
    const NEEDS: Constant<Volts> = Constant::of(
        "least voltage of a board",
        Volts(150.0),
        Tag::Model("a supply made for 208 and 240 V; on one leg and a back-feed it is dead"),
    );
    /// Water on the floor that wets the tray's sensor.
    const TRAY: Constant<Volume> =
        Constant::of("water that wets the tray", Volume(0.0005), Tag::Model("half a liter around the heater's foot"));
    /// Watched for beyond a switching point, so that the converter's step has surely been made.
    const MARGIN: Constant<Kelvins> =
        Constant::of("margin of a step of the converter", Kelvins(0.4), Tag::Computed("1/1024 at 165 °F is 0.3 K"));
    /// Reading below the setting at which it heats again.
    const DIFFERENTIAL: Constant<Kelvins> = Constant::of(
        "differential of a board",
        Kelvins::fahrenheit(8.0),
        Tag::Memory("control makers' data: typical field 8-20 °F, a board's at the lower end"),
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

/// What the board finds around it at one moment.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct Sensed {
    /// What each zone is set to.
    pub settings: [Temperature; 2],
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
    /// Upper and lower sensor.
    pub sensors: [Sensor; 2],
    /// Its own supply is there.
    pub powered: bool,
    /// Which zone it wants heated.
    pub calls: [bool; 2],
    /// Why it does not heat; kept until its supply is taken away.
    pub lockout: Option<Lockout>,
}

impl Board {
    /// A sound one.
    pub const fn sound() -> Self {
        Self { sensors: [Sensor::SOUND; 2], powered: true, calls: [false; 2], lockout: None }
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

    /// Takes note of what it senses: locks out, calls, stops calling.
    pub fn decide(&mut self, sensed: Sensed) {
        if !self.powered {
            (self.calls, self.lockout) = ([false; 2], None);
            return;
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
        for ((call, reading), setting) in self.calls.iter_mut().zip(readings).zip(sensed.settings) {
            let Reading::Is(temperature) = reading else { continue };
            if temperature >= setting {
                *call = false;
            } else if temperature.get() <= setting.get() - DIFFERENTIAL.get().get() {
                *call = true;
            }
        }
        if self.lockout.is_some() {
            self.calls = [false; 2];
        }
    }

    /// Temperature of a sensor's body that the board takes for another.
    fn body_for(&self, level: Level, reading: f64) -> Temperature {
        let drift = self.sensors.get(level.index()).map_or(1.0, |sensor| sensor.drift);
        temperature_of(thermistor(Temperature(reading)) * (1.0 / drift))
    }

    /// Body temperatures between which a zone stays as it is, falling and rising: the next at which the board
    /// decides otherwise. None while it does not heat whatever they are.
    pub(crate) fn stays(&self, level: Level, setting: Temperature) -> Option<[Temperature; 2]> {
        if !self.powered || self.lockout.is_some() {
            return None;
        }
        let margin = MARGIN.get().get();
        let (low, high) = if self.calls[level.index()] {
            (0.0, setting.get() + margin)
        } else {
            (setting.get() - DIFFERENTIAL.get().get() - margin, TOO_HOT.get().get() + margin)
        };
        let low = if low > 0.0 { self.body_for(level, low) } else { Temperature(0.0) };
        Some([low, self.body_for(level, high)])
    }
}

impl Plant {
    /// Lets the board, where there is one, decide by what it senses now.
    pub(super) fn govern(&mut self) -> Option<[bool; 2]> {
        let mut board = self.board?;
        board.decide(Sensed {
            settings: self.thermostats.map(|zone| zone.dial),
            bodies: self.thermostats.map(|zone| zone.body),
            water: self.wetted(Level::Upper),
            tray_wet: self.plumbing.on_floor >= TRAY.get(),
        });
        self.board = Some(board);
        Some(board.calls)
    }

    /// Resistance of each sensor between the pins of its plug.
    pub fn sensor_ohms(&self) -> [Ohms; 2] {
        let Some(board) = &self.board else { return [Ohms(f64::INFINITY); 2] };
        let [upper, lower] = self.thermostats.map(|zone| zone.body);
        [board.sensors[0].resistance(upper), board.sensors[1].resistance(lower)]
    }

    /// Tells the board whether its supply is there. Returns whether that is news to it.
    pub(crate) fn supply_board(&mut self, live: &Live) -> bool {
        let Some(board) = &mut self.board else { return false };
        let there = live.volts(Screw::K1.into(), Screw::K2.into()) >= NEEDS.get();
        let news = there != board.powered;
        board.powered = there;
        news
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    const fn f(fahrenheit: f64) -> Temperature {
        Temperature::fahrenheit(fahrenheit)
    }

    fn sensed(upper: f64, lower: f64) -> Sensed {
        Sensed { settings: [f(120.0); 2], bodies: [f(upper), f(lower)], water: true, tray_wet: false }
    }

    #[test]
    fn calls_by_zone_with_a_differential() {
        let mut board = Board::sound();
        for (upper, lower, calls) in [
            (60.0, 60.0, [true, true]),
            (121.0, 60.0, [false, true]),
            (121.0, 121.0, [false, false]),
            (115.0, 115.0, [false, false]),
            (115.0, 111.0, [false, true]),
        ] {
            board.decide(sensed(upper, lower));
            assert_eq!(board.calls, calls, "{upper} {lower}");
        }
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
            assert!(board.calls[0]);
            spoil(&mut board, &mut now);
            board.decide(now);
            assert_eq!(board.lockout, Some(lockout));
            assert_eq!(board.calls, [false; 2]);
            board.sensors = [Sensor::SOUND; 2];
            board.decide(sound);
            assert_eq!(board.lockout, Some(lockout), "it stays");
            board.powered = false;
            board.decide(sound);
            board.powered = true;
            board.decide(sound);
            assert_eq!(board.lockout, None);
            assert!(board.calls[0], "and heats again");
        }
    }

    /// Trade sheet 9, F60 (common practice, no source): a sensor over 10 % off its curve.
    #[test]
    fn a_drifted_sensor_overheats() {
        let mut board = Board::sound();
        board.sensors = [Sensor { drift: 1.2, ..Sensor::SOUND }; 2];
        board.decide(sensed(122.0, 122.0));
        board.decide(sensed(124.0, 124.0));
        let Reading::Is(read) = board.reads(Level::Upper, f(124.0)) else { panic!() };
        assert!(read < f(118.0), "too high a resistance reads cold and overheats: {}", read.to_fahrenheit());
    }
}
