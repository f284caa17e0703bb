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
