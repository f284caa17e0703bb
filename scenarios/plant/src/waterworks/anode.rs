//! The anode rod: a metal that the water takes instead of the shell's steel.

use quantity::{Constant, Metres, Tag};
use serde::{Deserialize, Serialize};

use crate::named::named;

named! {
    /// What a rod is cast of.
    AnodeMetal {
        /// Magnesium: protects in any water, and sets hydrogen free.
        Magnesium = "magnesium",
        /// Aluminium with a little zinc: hardly any hydrogen.
        AluminiumZinc = "aluminium-zinc",
    }
}

quantity::constants! {
    /// A rod with less of its metal is worn: its core shows somewhere, and within the year it gives out.
    const WORN: Constant = Constant::new(
        "share of an anode rod's metal below which it is worn",
        0.4,
        "",
        Tag::Computed("a rod of 3/4 in on a core of 1/8 in that has shrunk to 1/2 in; the 1/2 in is common practice"),
    );
    /// Length of a rod in the height of the water space.
    const LENGTH: Constant = Constant::new(
        "length of an anode rod, of the height of the water space",
        0.8,
        "",
        Tag::Model("from the head to a hand above the bottom: some 36 in in a tank of 45 in"),
    );
    /// A rod with less of its metal hardly protects.
    const GIVES_OUT: Constant = Constant::new(
        "share of an anode rod's metal below which it protects ever less",
        0.1,
        "",
        Tag::Model("bare core over most of its length"),
    );
    /// Hydrogen of an aluminium rod over that of one of magnesium.
    const LESS_HYDROGEN: Constant = Constant::new(
        "hydrogen of an aluminium rod, of a magnesium rod's",
        0.02,
        "",
        Tag::Model("changing to aluminium with zinc ends the smell in most houses, common practice"),
    );
}

/// The rod as it is now.
#[derive(Clone, Copy, PartialEq, Debug, Serialize, Deserialize)]
pub struct Anode {
    /// Its metal.
    pub metal: AnodeMetal,
    /// Share of its metal that is left, 0 to 1.
    pub left: f64,
}

impl Anode {
    /// A new one.
    pub const fn new(metal: AnodeMetal) -> Self {
        Self { metal, left: 1.0 }
    }

    /// Its core wire shows: time for a new one.
    pub fn is_worn(&self) -> bool {
        self.left < WORN.get()
    }

    /// Length of a rod that hangs in a water space of this height.
    pub fn length(height: Metres) -> Metres {
        Metres(LENGTH.get() * height.get())
    }

    /// Share of its length over which the core is bare, 0 to 1: it begins when it is worn, and the rest of the metal goes
    /// evenly with it.
    pub fn bare(&self) -> f64 {
        (1.0 - self.left / WORN.get()).clamp(0.0, 1.0)
    }

    /// How well it protects, 0 to 1.
    pub fn protects(&self) -> f64 {
        (self.left / GIVES_OUT.get()).clamp(0.0, 1.0)
    }

    /// Hydrogen it sets free, of what a sound magnesium rod does.
    pub fn hydrogen(&self) -> f64 {
        let of_metal = match self.metal {
            AnodeMetal::Magnesium => 1.0,
            AnodeMetal::AluminiumZinc => LESS_HYDROGEN.get(),
        };
        of_metal * self.protects()
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn its_core_comes_bare_as_it_wears() {
        let bare = |left| Anode { metal: AnodeMetal::Magnesium, left }.bare();
        assert_eq!((bare(1.0), bare(WORN.get()), bare(0.0)), (0.0, 0.0, 1.0));
        assert!((bare(0.3) - 0.25).abs() < 1e-12 && (bare(0.1) - 0.75).abs() < 1e-12);
        // A rod that hardly protects is bare over most of its length.
        assert!(bare(GIVES_OUT.get()) > 0.5);
        // Rods are sold some 33 to 44 in long for tanks of 40 to 50 gallons: common practice, no source.
        let inches = |height| Anode::length(Metres(height)).get() / 0.0254;
        assert!((33.0..44.0).contains(&inches(1.1)), "{}", inches(1.1));
    }
}
