//! The body as a branch of the circuit: impedance by touch voltage, population, wetness, area and path.
//!
//! The tables are for large areas of contact, as of a hand that grasps. A fingertip has more impedance; the
//! bench counts every touch like a whole hand, which errs towards the harm.

use quantity::{Amps, Constant, Ohms, Tag, Volts};
use serde::{Deserialize, Serialize};

use super::shock::Path;

mod tables;

pub(crate) use tables::CONSTANTS as TABLES;
pub use tables::{TABLE_1, hand_to_hand, hand_to_hand_1994, internal};

/// The share of the population whose impedance is lower.
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Debug, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Percentile {
    /// Five in a hundred have less: the careful assumption.
    P5,
    /// Half have less.
    P50,
    /// Ninety-five in a hundred have less.
    P95,
}

/// What wets the skin, driest first.
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Debug, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Wetness {
    /// Dry hands.
    Dry,
    /// Wet with tap water.
    Water,
    /// Wet with salt water or sweat.
    Salt,
}

/// How much skin touches, most first.
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Debug, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Area {
    /// A hand that grasps, about 100 square centimetres: what the tables are for.
    Large,
    /// Fingers laid on, about 10 square centimetres.
    Medium,
    /// A fingertip, about 1 square centimetre.
    Small,
}

impl Area {
    /// The skin of a contact this large over that of a grasping hand.
    const fn skin(self) -> f64 {
        match self {
            Self::Large => 1.0,
            Self::Medium => MEDIUM_SKIN.get(),
            Self::Small => SMALL_SKIN.get(),
        }
    }
}

/// What a hand wears.
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Debug, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Glove {
    /// Nothing, or gloves without a voltage rating.
    Bare,
    /// Rated insulating gloves, tested, sound and dry.
    Rated,
    /// Rated gloves that are wet through or inside: no protection is counted.
    RatedWet,
    /// Rated gloves with a cut or a hole: no protection is counted.
    RatedDamaged,
}

/// What the feet stand in and on.
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Debug, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Footing {
    /// Dry shoes on a dry floor.
    Dry,
    /// Damp shoes.
    Damp,
    /// Standing in water, kneeling on a wet floor, or bare feet on it.
    Wet,
}

quantity::constants! {
    /// Insulating gloves, class 00, one hand.
    pub const GLOVE: Constant = Constant::new(
        "rated glove",
        5e6,
        "ohm",
        Tag::Computed("0.5 nF of 100 cm2 rubber 0.5 mm thick at 60 Hz; proof-test currents agree"),
    );
    /// Dry shoes on a dry floor, both feet.
    pub const DRY_SHOES: Constant = Constant::new(
        "dry shoes",
        200e3,
        "ohm",
        Tag::Memory("dry leather soles 0.1 to 0.5 megohm (table often reprinted from R. H. Lee, IEEE 1971)"),
    );
    /// Damp shoes, both feet.
    pub const DAMP_SHOES: Constant = Constant::new(
        "damp shoes",
        5e3,
        "ohm",
        Tag::Memory("wet leather soles 5 to 20 kilohm (same table); the lower end"),
    );
    /// Skin of a contact of some 10 cm², over that of a grasping hand.
    const MEDIUM_SKIN: Constant = Constant::new(
        "skin under some 10 cm², over a grasping hand's",
        10.0,
        "1",
        Tag::Model("skin passes current by its area; IEC 60479-1, figures 5 to 7, was not to be had"),
    );
    /// The same of some 1 cm².
    const SMALL_SKIN: Constant =
        Constant::new("the same under some 1 cm²", 100.0, "1", Tag::Model("skin passes current by its area"));
}

/// A person who touches something, as the circuit sees them.
#[derive(Clone, Copy, PartialEq, Debug, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Touch {
    /// The way through the body.
    pub path: Path,
    /// Where in the population.
    pub percentile: Percentile,
    /// The skin that touches.
    pub wetness: Wetness,
    /// How much of it.
    pub area: Area,
    /// What the hands wear.
    pub glove: Glove,
    /// What the feet stand in, for a path that ends there.
    pub footing: Footing,
}

impl Touch {
    /// What is worn, in series with the body.
    pub fn worn(&self) -> Ohms {
        let glove = if self.glove == Glove::Rated { GLOVE.get() } else { 0.0 };
        let shoes = match self.footing {
            Footing::Dry => DRY_SHOES.get(),
            Footing::Damp => DAMP_SHOES.get(),
            Footing::Wet => 0.0,
        };
        Ohms(match self.path {
            Path::HandHand => 2.0 * glove,
            Path::LeftHandFeet | Path::RightHandFeet => glove + shoes,
            Path::HandsFeet => glove / 2.0 + shoes,
            // Both shoes side by side make `shoes`: each is twice that, and here they lie one behind the other.
            Path::FootFoot => 2.0 * (2.0 * shoes),
            Path::LeftHandTrunk | Path::RightHandTrunk => glove,
        })
    }

    /// The body alone at a voltage across it.
    pub fn body(&self, across: Volts) -> Ohms {
        let whole = hand_to_hand(across, self.percentile, self.wetness).get();
        let inside = internal(self.percentile).get().min(whole);
        Ohms(inside + (whole - inside) * self.area.skin()) * self.path.impedance_factor()
    }

    /// Body and what is worn at a touch voltage over both.
    pub fn impedance(&self, touch: Volts) -> Ohms {
        let (worn, total) = (self.worn().get(), touch.get().abs());
        if worn <= 0.0 {
            return self.body(touch);
        }
        // The body's share grows with its own voltage, so halving finds the one that fits.
        let (mut low, mut high) = (0.0, total);
        for _ in 0..60 {
            let across = 0.5 * (low + high);
            let fits = across * (1.0 + worn / self.body(Volts(across)).get());
            if fits < total { low = across } else { high = across }
        }
        Ohms(worn + self.body(Volts(0.5 * (low + high))).get())
    }

    /// The current a touch voltage drives.
    pub fn current(&self, touch: Volts) -> Amps {
        Amps(touch.get().abs() / self.impedance(touch).get())
    }
}

/// A person and a circuit that agree.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct Settled {
    /// Touch voltage.
    pub volts: Volts,
    /// Impedance at that voltage.
    pub impedance: Ohms,
    /// Current.
    pub current: Amps,
    /// Times the circuit was solved.
    pub solves: u32,
}

/// Most solves of a circuit for one touch.
const MOST_SOLVES: u32 = 24;
/// Two impedances closer than this share of each other are one.
const SETTLED: f64 = 1e-9;

/// Finds the impedance at which person and circuit agree. `circuit` is solved with the impedance as a
/// branch and gives the size of the voltage over it:
/// `settle(&touch, |z| plant.energise(&[Bridge::ohms(a, b, z)]).volts(a, b))`.
///
/// A stiff supply settles in two solves, a weak one in a few: the difference of what went in and what
/// came out falls with the impedance, so a secant homes in on its zero.
pub fn settle(touch: &Touch, mut circuit: impl FnMut(Ohms) -> Volts) -> Settled {
    let mut tried = touch.impedance(Volts(120.0)).get();
    let mut last: Option<(f64, f64)> = None;
    for solves in 1..=MOST_SOLVES {
        let volts = circuit(Ohms(tried));
        let wanted = touch.impedance(volts).get();
        let miss = wanted - tried;
        if miss.abs() <= SETTLED * tried || miss.is_nan() || solves == MOST_SOLVES {
            let current = Amps(volts.get().abs() / tried);
            return Settled { volts, impedance: Ohms(tried), current, solves };
        }
        let slope = last.map_or(-1.0, |(z, m)| (miss - m) / (tried - z));
        last = Some((tried, miss));
        // A slope flatter than -1 cannot be: more impedance never lowers the voltage over it.
        tried -= miss / slope.min(-1.0);
    }
    Settled { volts: Volts(0.0), impedance: Ohms(tried), current: Amps(0.0), solves: MOST_SOLVES }
}

#[cfg(test)]
mod tests;
