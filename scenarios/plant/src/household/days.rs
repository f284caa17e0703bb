//! What each household does with hot water, hour by hour, by weekday and by season: invented habits.

use quantity::{Constant, Tag};

use super::HouseholdKind;
use super::customs::Days::{Cold, Every, Nth, Warm, Weekend, Workdays};
use super::customs::Use::{Bath, Dishes, Hands, Laundry, Shampoo, Shower};
use super::customs::{HABITS, Habit, habit};

quantity::constants! {
    /// One person, evening showers.
    const SINGLE: Constant<&[Habit]> = Constant::of(
        "draws of one person",
        &[
            habit(6.75, Hands, 1.0, Workdays),
            habit(8.5, Hands, 1.5, Weekend),
            habit(12.8, Dishes, 2.0, Weekend),
            habit(19.4, Dishes, 3.0, Every),
            habit(21.3, Shower, 9.0, Every),
            habit(22.5, Hands, 1.0, Every),
        ],
        Tag::Invented(HABITS),
    );
    /// Two people, both out by day.
    const COUPLE: Constant<&[Habit]> = Constant::of(
        "draws of a couple",
        &[
            habit(6.4, Shower, 7.0, Workdays),
            habit(6.8, Shower, 8.0, Workdays),
            habit(8.4, Shower, 8.0, Weekend),
            habit(9.1, Shower, 8.0, Weekend),
            habit(12.7, Hands, 1.0, Weekend),
            habit(18.9, Dishes, 4.0, Every),
            habit(20.5, Laundry, 4.0, Nth(3)),
            habit(22.3, Hands, 1.5, Every),
        ],
        Tag::Invented(HABITS),
    );
    /// Two adults and two children.
    const FAMILY: Constant<&[Habit]> = Constant::of(
        "draws of a family",
        &[
            habit(6.1, Shower, 6.0, Workdays),
            habit(6.4, Shower, 6.0, Workdays),
            habit(7.2, Hands, 2.0, Every),
            habit(8.6, Shower, 7.0, Weekend),
            habit(12.4, Dishes, 2.0, Weekend),
            habit(16.2, Laundry, 4.0, Nth(2)),
            habit(18.6, Dishes, 4.0, Every),
            habit(19.6, Bath, 6.0, Every),
            habit(20.9, Shower, 7.0, Every),
            habit(22.2, Hands, 1.0, Every),
        ],
        Tag::Invented(HABITS),
    );
    /// Three generations, somebody always at home.
    const FULL_HOUSE: Constant<&[Habit]> = Constant::of(
        "draws of three generations",
        &[
            habit(5.8, Shower, 6.0, Workdays),
            habit(6.2, Shower, 6.0, Every),
            habit(6.6, Shower, 6.0, Workdays),
            habit(8.0, Dishes, 3.0, Every),
            habit(9.6, Shower, 6.0, Weekend),
            habit(10.5, Laundry, 4.0, Nth(2)),
            habit(12.6, Dishes, 3.0, Every),
            habit(15.2, Hands, 1.5, Every),
            habit(18.7, Dishes, 5.0, Every),
            habit(19.7, Bath, 6.0, Every),
            habit(20.9, Shower, 6.0, Every),
            habit(21.4, Shower, 6.0, Every),
        ],
        Tag::Invented(HABITS),
    );
    /// One person on changing shifts.
    const SHIFTS: Constant<&[Habit]> = Constant::of(
        "draws of one person on shifts",
        &[
            habit(3.2, Shower, 8.0, Workdays),
            habit(3.8, Dishes, 2.0, Workdays),
            habit(10.5, Hands, 1.0, Every),
            habit(12.2, Shower, 7.0, Workdays),
            habit(13.0, Dishes, 2.5, Every),
            habit(18.5, Hands, 1.0, Every),
            habit(20.2, Shower, 9.0, Weekend),
            habit(21.0, Laundry, 4.0, Nth(4)),
        ],
        Tag::Invented(HABITS),
    );
    /// A retired couple, at home all day.
    const RETIRED: Constant<&[Habit]> = Constant::of(
        "draws of a retired couple",
        &[
            habit(7.4, Shower, 6.0, Every),
            habit(8.1, Shower, 6.0, Every),
            habit(9.0, Dishes, 2.0, Every),
            habit(10.6, Hands, 1.0, Every),
            habit(12.6, Dishes, 4.0, Every),
            habit(15.4, Hands, 1.0, Every),
            habit(16.5, Laundry, 4.0, Nth(3)),
            habit(18.6, Dishes, 3.0, Every),
            habit(20.3, Bath, 6.0, Nth(3)),
            habit(21.4, Hands, 1.5, Every),
        ],
        Tag::Invented(HABITS),
    );
    /// Long showers one after the other.
    const TEENAGERS: Constant<&[Habit]> = Constant::of(
        "draws of a family with teenagers",
        &[
            habit(5.9, Shower, 5.0, Workdays),
            habit(6.3, Shower, 9.0, Workdays),
            habit(6.7, Shower, 9.0, Workdays),
            habit(9.8, Shower, 10.0, Weekend),
            habit(10.6, Shower, 9.0, Weekend),
            habit(13.0, Dishes, 3.0, Weekend),
            habit(16.6, Laundry, 4.0, Every),
            habit(17.6, Shower, 8.0, Workdays),
            habit(19.0, Dishes, 5.0, Every),
            habit(20.6, Shower, 6.0, Every),
            habit(22.4, Hands, 1.5, Every),
        ],
        Tag::Invented(HABITS),
    );
    /// Small draws day and night, much laundry.
    const NEW_BABY: Constant<&[Habit]> = Constant::of(
        "draws of a couple with a new baby",
        &[
            habit(1.8, Hands, 1.0, Every),
            habit(4.6, Hands, 1.0, Every),
            habit(6.7, Shower, 5.0, Every),
            habit(7.6, Dishes, 2.0, Every),
            habit(9.3, Bath, 2.0, Every),
            habit(10.8, Laundry, 4.0, Every),
            habit(13.1, Dishes, 3.0, Every),
            habit(15.7, Hands, 1.5, Every),
            habit(18.4, Dishes, 3.0, Every),
            habit(20.1, Shower, 5.0, Every),
            habit(22.6, Hands, 1.0, Every),
        ],
        Tag::Invented(HABITS),
    );
    /// Heads washed from nine to five.
    const HAIRDRESSER: Constant<&[Habit]> = Constant::of(
        "draws of a hairdresser at home",
        &[
            habit(6.9, Shower, 7.0, Every),
            habit(9.3, Shampoo, 5.0, Workdays),
            habit(10.4, Shampoo, 5.0, Workdays),
            habit(11.5, Shampoo, 5.0, Workdays),
            habit(12.6, Dishes, 2.0, Every),
            habit(14.2, Shampoo, 6.0, Workdays),
            habit(15.3, Shampoo, 5.0, Workdays),
            habit(16.4, Laundry, 4.0, Workdays),
            habit(17.2, Shampoo, 5.0, Workdays),
            habit(19.2, Dishes, 3.0, Every),
            habit(20.5, Bath, 6.0, Weekend),
        ],
        Tag::Invented(HABITS),
    );
    /// Early and late, and at noon in the warm season.
    const FARM: Constant<&[Habit]> = Constant::of(
        "draws of a farm",
        &[
            habit(4.8, Dishes, 5.0, Every),
            habit(6.9, Shower, 5.0, Every),
            habit(7.5, Dishes, 3.0, Every),
            habit(12.3, Shower, 5.0, Warm),
            habit(12.9, Dishes, 4.0, Every),
            habit(16.8, Dishes, 5.0, Every),
            habit(18.5, Shower, 6.0, Every),
            habit(19.1, Shower, 6.0, Every),
            habit(19.8, Bath, 5.0, Weekend),
            habit(20.8, Laundry, 4.0, Nth(2)),
        ],
        Tag::Invented(HABITS),
    );
    /// Nobody there but at weekends.
    const CABIN: Constant<&[Habit]> = Constant::of(
        "draws of a weekend cabin",
        &[
            habit(8.9, Shower, 7.0, Weekend),
            habit(9.5, Shower, 7.0, Weekend),
            habit(10.4, Dishes, 3.0, Weekend),
            habit(13.6, Dishes, 4.0, Weekend),
            habit(17.5, Hands, 2.0, Weekend),
            habit(18.9, Dishes, 4.0, Weekend),
            habit(20.4, Shower, 8.0, Weekend),
            habit(22.0, Hands, 1.0, Weekend),
        ],
        Tag::Invented(HABITS),
    );
    /// Four tenants with hours of their own.
    const ROOMS: Constant<&[Habit]> = Constant::of(
        "draws of rented rooms",
        &[
            habit(4.6, Shower, 6.0, Workdays),
            habit(6.4, Shower, 7.0, Workdays),
            habit(7.7, Shower, 6.0, Every),
            habit(9.4, Dishes, 2.0, Every),
            habit(11.2, Shower, 8.0, Weekend),
            habit(13.3, Dishes, 2.0, Every),
            habit(16.9, Laundry, 4.0, Nth(2)),
            habit(17.4, Dishes, 3.0, Every),
            habit(21.1, Dishes, 3.0, Every),
            habit(22.2, Shower, 7.0, Every),
            habit(23.4, Hands, 1.5, Every),
        ],
        Tag::Invented(HABITS),
    );
    /// A long tub every evening, another in the cold season.
    const TUB_LOVER: Constant<&[Habit]> = Constant::of(
        "draws of somebody who loves the tub",
        &[
            habit(7.3, Shower, 4.0, Workdays),
            habit(9.6, Bath, 8.0, Cold),
            habit(12.9, Dishes, 2.0, Weekend),
            habit(18.6, Dishes, 3.0, Every),
            habit(20.2, Bath, 9.0, Every),
            habit(22.7, Hands, 1.0, Every),
        ],
        Tag::Invented(HABITS),
    );
    /// Machines from eight to five.
    const SMALL_LAUNDRY: Constant<&[Habit]> = Constant::of(
        "draws of a small laundry with a flat",
        &[
            habit(6.5, Shower, 6.0, Every),
            habit(8.2, Laundry, 4.0, Workdays),
            habit(9.5, Laundry, 4.0, Workdays),
            habit(10.8, Laundry, 4.0, Workdays),
            habit(12.5, Dishes, 3.0, Every),
            habit(13.6, Laundry, 4.0, Workdays),
            habit(14.9, Laundry, 4.0, Workdays),
            habit(16.4, Hands, 2.0, Workdays),
            habit(18.7, Dishes, 3.0, Every),
            habit(20.2, Shower, 7.0, Every),
            habit(21.2, Shower, 6.0, Every),
        ],
        Tag::Invented(HABITS),
    );
}

impl HouseholdKind {
    pub(super) const fn habits(self) -> &'static [Habit] {
        match self {
            Self::Single => SINGLE.get(),
            Self::Couple => COUPLE.get(),
            Self::Family => FAMILY.get(),
            Self::FullHouse => FULL_HOUSE.get(),
            Self::Shifts => SHIFTS.get(),
            Self::Retired => RETIRED.get(),
            Self::Teenagers => TEENAGERS.get(),
            Self::NewBaby => NEW_BABY.get(),
            Self::Hairdresser => HAIRDRESSER.get(),
            Self::Farm => FARM.get(),
            Self::Cabin => CABIN.get(),
            Self::Rooms => ROOMS.get(),
            Self::TubLover => TUB_LOVER.get(),
            Self::SmallLaundry => SMALL_LAUNDRY.get(),
        }
    }

    /// They are there at weekends only.
    pub(super) const fn weekends_only(self) -> bool {
        matches!(self, Self::Cabin)
    }
}
