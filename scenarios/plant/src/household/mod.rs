//! The people of the house: when they draw hot water, what they do when it fails, what they can tell.

mod account;
mod customs;
mod days;
mod habits;
mod live;
mod pour;
mod recall;
mod seen;
mod tell;
#[cfg(test)]
mod tests;
mod week;

pub use account::{Account, Answer, DayPart, HowMuch, Meddler, Question, Symptom};
pub use habits::Wish;
pub use live::week;
pub use pour::{Pour, meant};
pub use tell::{account, complaint};
pub use week::{Drawn, Life, Week, Worked};

use quantity::{Constant, Listed, Tag};

use crate::named::named;
use crate::supply::ServiceKind;

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
        /// One person on changing shifts: showers at night and at noon.
        Shifts = "shifts",
        /// A retired couple, at home all day.
        Retired = "retired",
        /// Two adults, three teenagers, long showers one after the other.
        Teenagers = "teenagers",
        /// A couple with a new baby: small draws day and night, much laundry.
        NewBaby = "new-baby",
        /// A hairdresser who works at home.
        Hairdresser = "hairdresser",
        /// A farm: early and late, and at noon in the warm season.
        Farm = "farm",
        /// A cabin lived in at weekends only.
        Cabin = "cabin",
        /// Rented rooms: four tenants with hours of their own.
        Rooms = "rooms",
        /// Somebody who takes a long tub every evening, and another in the cold season.
        TubLover = "tub-lover",
        /// A small laundry with a flat behind it.
        SmallLaundry = "small-laundry",
    }
}

quantity::constants! {
    /// Adults and children of the full house.
    const FULL_HOUSE: Constant<(u16, u16)> =
        Constant::new("adults and children of the full house", (4, 2), "", Tag::Invented("three generations"));
    /// Adults and children of the family with teenagers.
    const TEENAGERS: Constant<(u16, u16)> =
        Constant::new("adults and children of the family with teenagers", (2, 3), "", Tag::Invented("a full bathroom"));
    /// Adults and children of the farm.
    const FARM: Constant<(u16, u16)> =
        Constant::new("adults and children of the farm", (3, 1), "", Tag::Invented("two of them work outdoors"));
    /// Tenants of the rented rooms.
    const ROOMS: Constant<(u16, u16)> =
        Constant::new("adults and children in the rented rooms", (4, 0), "", Tag::Invented("a room each"));
}

/// The lists of this folder.
pub(crate) const SOURCES: &[&[Listed]] = &[
    CONSTANTS,
    customs::CONSTANTS,
    days::CONSTANTS,
    live::CONSTANTS,
    pour::CONSTANTS,
    recall::CONSTANTS,
    seen::CONSTANTS,
    tell::CONSTANTS,
    week::CONSTANTS,
];

impl HouseholdKind {
    /// Adults and children living there. Invented.
    pub const fn people(self) -> (u16, u16) {
        match self {
            Self::Single | Self::Shifts | Self::Hairdresser | Self::TubLover => (1, 0),
            Self::Couple | Self::Retired | Self::Cabin | Self::SmallLaundry => (2, 0),
            Self::NewBaby => (2, 1),
            Self::Teenagers => TEENAGERS.get(),
            Self::Farm => FARM.get(),
            Self::Rooms => ROOMS.get(),
            Self::Family => (2, 2),
            Self::FullHouse => FULL_HOUSE.get(),
        }
    }

    /// Whether such people are met in a building fed like this. A family's house has no 480Y/277 V service: it feeds
    /// larger buildings, and lamps and plugs of a dwelling may not hang on it (NEC 210.6(A), from memory).
    pub const fn usual_on(self, service: ServiceKind) -> bool {
        !matches!(service, ServiceKind::Wye277) || matches!(self, Self::Rooms | Self::SmallLaundry)
    }
}
