//! The people of the house: when they draw hot water, what they do when it fails, what they can tell.

mod account;
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

impl HouseholdKind {
    /// Adults and children living there. Invented.
    pub const fn people(self) -> (u16, u16) {
        match self {
            Self::Single => (1, 0),
            Self::Couple => (2, 0),
            Self::Family => (2, 2),
            Self::FullHouse => (4, 2),
        }
    }
}
