//! The people of the house: when they draw hot water, what they do when it fails, what they can tell.

mod account;
mod customs;
mod habits;
mod live;
mod tell;
#[cfg(test)]
mod tests;
mod week;

pub use account::{Account, Answer, HowMuch, Meddler, Question, Symptom};
pub use live::week;
pub use tell::{account, complaint};
pub use week::{Drawn, Life, Week};

use quantity::{Constant, Listed, Tag};

use crate::named::named;

named! {
    /// Households of our own invention.
    HouseholdKind {
        /// One person, evening showers.
        Single = "single",
        /// Two people, both out by day.
        Couple = "couple",
        /// Two adults and two children.
        Family = "family",
        /// Three generations, somebody always at home.
        FullHouse = "full-house",
    }
}

quantity::constants! {
    /// Adults and children of the full house.
    const FULL_HOUSE: Constant<(u16, u16)> =
        Constant::new("adults and children of the full house", (4, 2), "", Tag::Invented("three generations"));
}

/// The lists of this folder.
pub(crate) const SOURCES: &[&[Listed]] =
    &[CONSTANTS, customs::CONSTANTS, live::CONSTANTS, tell::CONSTANTS, week::CONSTANTS];

impl HouseholdKind {
    /// Adults and children living there. Invented.
    pub const fn people(self) -> (u16, u16) {
        match self {
            Self::Single => (1, 0),
            Self::Couple => (2, 0),
            Self::Family => (2, 2),
            Self::FullHouse => FULL_HOUSE.get(),
        }
    }
}
