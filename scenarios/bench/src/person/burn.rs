//! Burns by hot water, steam and metal: the skin's burn integral put into degrees.

use quantity::{Constant, Seconds, Tag, Temperature};
use serde::{Deserialize, Serialize};
use solver::skin::{Piece, Skin};

use super::harm::{Burn, Who};

/// How deep a burn goes.
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Debug, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Degree {
    /// No burn.
    None,
    /// Red and sore.
    First,
    /// Blisters.
    Second,
    /// Through the skin.
    Third,
}

/// What lay on the skin.
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Debug, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Source {
    /// Running water, or a bath: as much of it as there is time for.
    Water,
    /// A splash that stays on the skin and cools on it.
    Splash,
    /// Steam that condenses on the skin.
    Steam,
    /// Hot metal touched with the bare hand.
    Metal,
}

/// An exposure of bare skin.
#[derive(Clone, Copy, PartialEq, Debug, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Exposure {
    /// What lay on the skin.
    pub source: Source,
    /// How hot it was at first.
    pub temperature: Temperature,
    /// For how long.
    pub seconds: Seconds,
}

/// Burn integral from which skin is red.
pub const FIRST_DEGREE: Constant =
    Constant::new("first-degree burn", 0.53, "1", Tag::Memory("Henriques 1947 (8.4)"));
/// Burn integral from which it blisters.
pub const SECOND_DEGREE: Constant =
    Constant::new("second-degree burn", 1.0, "1", Tag::Memory("Henriques 1947 (8.4)"));
/// Burn integral from which it is burnt through.
pub const THIRD_DEGREE: Constant =
    Constant::new("third-degree burn", 1e4, "1", Tag::Memory("Henriques 1947 (8.4)"));
/// A child burns in this share of an adult's time. The page of 8.3 has 30 s against 36 s at 54 °C; half
/// is the usual caution.
pub const CHILD_TIME: Constant =
    Constant::new("a child's time to a burn over an adult's", 0.5, "1", Tag::Memory("8.5"));
/// Film coefficient of water on skin.
pub const WATER_FILM: Constant =
    Constant::new("water on skin", 5000.0, "W/(m2 K)", Tag::Computed("validated against 8.1 (8.5)"));
/// Film coefficient of steam that condenses on skin.
pub const STEAM_FILM: Constant = Constant::new(
    "condensing steam on skin",
    1e4,
    "W/(m2 K)",
    Tag::Model("order of magnitude of film condensation; skin itself then limits the flow"),
);
/// Contact conductance of bare metal pressed by a hand.
pub const METAL_CONTACT: Constant =
    Constant::new("metal on skin", 2000.0, "W/(m2 K)", Tag::Model("order of magnitude of a firm touch"));
/// Heat capacity of the water a splash leaves on the skin: half a millimetre.
pub const SPLASH_LAYER: Constant = Constant::new(
    "water film of a splash",
    0.5e-3 * 4.18e6,
    "J/(m2 K)",
    Tag::Model("half a millimetre clings; evaporation left out, which errs towards the burn"),
);
/// Time until a hand is pulled back from what hurts.
pub const REFLEX: Constant =
    Constant::new("withdrawal from heat", 0.5, "s", Tag::Model("reaction of an alert adult"));
/// Largest burn integral told: beyond it nothing more can burn.
const OMEGA_CEILING: f64 = 1e9;

impl Degree {
    /// The degree a burn integral stands for.
    pub fn of(omega: f64) -> Self {
        if omega >= THIRD_DEGREE.get() {
            Self::Third
        } else if omega >= SECOND_DEGREE.get() {
            Self::Second
        } else if omega >= FIRST_DEGREE.get() {
            Self::First
        } else {
            Self::None
        }
    }

    /// The burn integral at which it begins.
    pub const fn omega(self) -> f64 {
        match self {
            Self::None => 0.0,
            Self::First => FIRST_DEGREE.get(),
            Self::Second => SECOND_DEGREE.get(),
            Self::Third => THIRD_DEGREE.get(),
        }
    }
}

impl Source {
    fn piece(self, temperature: Temperature, duration: Seconds) -> Piece {
        let (film, layer) = match self {
            Self::Water => (WATER_FILM.get(), None),
            Self::Splash => (WATER_FILM.get(), Some(SPLASH_LAYER.get())),
            Self::Steam => (STEAM_FILM.get(), None),
            Self::Metal => (METAL_CONTACT.get(), None),
        };
        Piece { duration, fluid: temperature, film, layer }
    }
}

/// An adult's time for each second of this person's.
fn pace(who: Who) -> f64 {
    match who {
        Who::Technician | Who::Adult => 1.0,
        Who::Child => 1.0 / CHILD_TIME.get(),
    }
}

impl Exposure {
    /// A hand held in water.
    pub const fn water(temperature: Temperature, seconds: Seconds) -> Self {
        Self { source: Source::Water, temperature, seconds }
    }

    /// What it does to somebody's skin, judged at the end of the exposure.
    pub fn suffer(self, who: Who) -> Burn {
        let piece = self.source.piece(self.temperature, self.seconds * pace(who));
        let outcome = Skin::adult().exposure(&[piece]);
        let omega = outcome.omega.min(OMEGA_CEILING);
        Burn {
            who,
            source: self.source,
            temperature: self.temperature,
            seconds: self.seconds,
            omega,
            basal_peak: outcome.peak,
            degree: Degree::of(omega),
        }
    }

    /// How long this much heat takes to a degree; `None` if not within the exposure.
    pub fn time_to(self, degree: Degree, who: Who) -> Option<Seconds> {
        if degree == Degree::None {
            return Some(Seconds(0.0));
        }
        let piece = self.source.piece(self.temperature, self.seconds * pace(who));
        Skin::adult().until(&[piece], degree.omega()).reached.map(|t| t / pace(who))
    }
}

/// What water that changes its temperature does, piece after piece (a tap that runs hot).
pub fn running(pieces: &[(Seconds, Temperature)], who: Who) -> Burn {
    let water: Vec<Piece> =
        pieces.iter().map(|(t, water)| Source::Water.piece(*water, *t * pace(who))).collect();
    let outcome = Skin::adult().exposure(&water);
    let omega = outcome.omega.min(OMEGA_CEILING);
    let hottest = pieces.iter().map(|(_, water)| water.get()).fold(0.0, f64::max);
    Burn {
        who,
        source: Source::Water,
        temperature: Temperature(hottest),
        seconds: pieces.iter().fold(Seconds(0.0), |sum, (t, _)| sum + *t),
        omega,
        basal_peak: outcome.peak,
        degree: Degree::of(omega),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn water(celsius: f64, seconds: f64) -> Exposure {
        Exposure::water(Temperature::celsius(celsius), Seconds(seconds))
    }

    /// 8.4, from memory of Henriques 1947.
    #[test]
    fn degrees_by_integral() {
        let cases = [
            (0.529, Degree::None),
            (0.53, Degree::First),
            (0.99, Degree::First),
            (1.0, Degree::Second),
            (9999.0, Degree::Second),
            (1e4, Degree::Third),
        ];
        for (omega, degree) in cases {
            assert_eq!(Degree::of(omega), degree);
        }
        for degree in [Degree::None, Degree::First, Degree::Second, Degree::Third] {
            assert_eq!(Degree::of(degree.omega()), degree);
        }
    }

    /// Check case 24, computed (8.5).
    #[test]
    fn check_case_24() {
        for (celsius, seconds) in [(49.0, 517.0), (55.0, 22.4), (60.0, 4.62), (65.0, 1.76)] {
            let found = water(celsius, 3600.0).time_to(Degree::Second, Who::Adult).unwrap().get();
            assert!((found / seconds - 1.0).abs() < 0.1, "{celsius} °C: {found} s");
            assert_eq!(water(celsius, seconds * 1.1).suffer(Who::Technician).degree, Degree::Second);
            assert!(water(celsius, seconds * 0.9).suffer(Who::Technician).degree < Degree::Second);
        }
    }

    /// 8.2, published (label table of an owner's manual): 140 °F burns in under 5 s, 120 °F takes over
    /// five minutes. CPSC memo of 1978 (8.1, published): first degree at 131 °F in 5 s; read as the order.
    #[test]
    fn label_of_the_heater() {
        let at = |fahrenheit, seconds| {
            Exposure::water(Temperature::fahrenheit(fahrenheit), Seconds(seconds)).suffer(Who::Adult).degree
        };
        assert_eq!(at(140.0, 5.0), Degree::Second);
        assert_eq!(at(120.0, 300.0), Degree::None);
        assert_eq!(at(120.0, 600.0), Degree::Second);
    }

    /// 8.5, from memory: a child burns in about half the time.
    #[test]
    fn a_child_burns_in_half_the_time() {
        let time = |who| water(55.0, 600.0).time_to(Degree::Second, who).unwrap().get();
        assert!((time(Who::Child) / time(Who::Adult) - 0.5).abs() < 0.01);
        assert!(water(55.0, 15.0).suffer(Who::Child).degree > water(55.0, 15.0).suffer(Who::Adult).degree);
    }

    #[test]
    fn hotter_longer_younger_is_never_milder() {
        for source in [Source::Water, Source::Splash, Source::Steam, Source::Metal] {
            for step in 0..40 {
                let temperature = Temperature::celsius(40.0 + 2.0 * f64::from(step));
                for tick in 0..20 {
                    let exposure =
                        Exposure { source, temperature, seconds: Seconds(0.2 + 0.7 * f64::from(tick)) };
                    let omega = |e: Exposure, who| e.suffer(who).omega;
                    let here = omega(exposure, Who::Adult);
                    let hotter =
                        Exposure { temperature: temperature.plus(quantity::Kelvins(0.5)), ..exposure };
                    let longer = Exposure { seconds: exposure.seconds + Seconds(0.2), ..exposure };
                    assert!(omega(hotter, Who::Adult) >= here, "{exposure:?}");
                    assert!(omega(longer, Who::Adult) >= here, "{exposure:?}");
                    assert!(omega(exposure, Who::Child) >= here, "{exposure:?}");
                }
            }
        }
    }

    /// A splash cools on the skin, so it burns less than a stream; steam burns more.
    #[test]
    fn sources_in_order() {
        let omega = |source| {
            let temperature = Temperature::celsius(99.0);
            Exposure { source, temperature, seconds: Seconds(1.0) }.suffer(Who::Adult).omega
        };
        assert!(omega(Source::Splash) < omega(Source::Water));
        assert!(omega(Source::Water) <= omega(Source::Steam));
    }

    /// A tap that turns hot: the cold stretch adds nothing, and its chill helps a little.
    #[test]
    fn a_tap_that_turns_hot() {
        let cold = (Seconds(10.0), Temperature::celsius(15.0));
        let hot = (Seconds(6.0), Temperature::celsius(60.0));
        let burn = running(&[cold, hot], Who::Adult);
        assert_eq!(burn.temperature, hot.1);
        assert_eq!(burn.seconds, Seconds(16.0));
        assert!(burn.omega < running(&[hot], Who::Adult).omega);
        assert_eq!(running(&[hot], Who::Adult).degree, Degree::Second);
    }
}
