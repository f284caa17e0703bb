//! The anode rod: a metal that the water takes instead of the shell's steel.

use quantity::{Constant, Tag};
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
