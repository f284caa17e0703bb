//! The people of the house: when they draw hot water, and what they notice.

mod account;

pub use account::{Account, Answer, HowMuch, Meddler, Question, Symptom};

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
