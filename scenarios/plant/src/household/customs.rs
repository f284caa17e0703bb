//! What hot water is used for, how a habit is written down, and what people feel.

use quantity::{Constant, Figure, Kelvins, Tag, Temperature};

use crate::waterworks::Tap;

/// What the water is for.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub(super) enum Use {
    /// Washing hands or a cup.
    Hands,
    /// Washing up.
    Dishes,
    /// A shower: somebody stands under it and stops when it turns cold.
    Shower,
    /// Filling a tub.
    Bath,
    /// The washing machine, hot only; nobody feels it.
    Laundry,
    /// A hairdresser washing hair.
    Shampoo,
}

impl Use {
    /// Tap, mixed flow in gallons a minute, wanted temperature in °F. Flows a little below what the
    /// taps give wide open.
    pub const fn manner(self) -> (Tap, f64, f64) {
        let (tap, manner) = match self {
            Self::Hands => (Tap::Kitchen, HANDS),
            Self::Dishes => (Tap::Kitchen, DISHES),
            Self::Shower => (Tap::Shower, SHOWER),
            Self::Bath => (Tap::Bath, BATH),
            Self::Laundry => (Tap::Laundry, LAUNDRY),
            Self::Shampoo => (Tap::Kitchen, SHAMPOO),
        };
        let (gpm, wanted) = manner.get();
        (tap, gpm, wanted)
    }
}

/// On which days a habit is kept.
#[derive(Clone, Copy, Debug)]
pub(super) enum Days {
    Every,
    Workdays,
    Weekend,
    /// Every so many days.
    Nth(u16),
    /// Every day of the cold season.
    Cold,
    /// Every day of the warm season.
    Warm,
}

#[derive(Clone, Copy)]
pub(super) struct Habit {
    /// Hour of the day.
    pub hour: f64,
    /// What for.
    pub purpose: Use,
    /// Minutes of running water.
    pub minutes: f64,
    /// On which days.
    pub days: Days,
}

impl Figure for Habit {
    const UNIT: &'static str = "";
    fn si(&self) -> String {
        let Self { hour, purpose, minutes, days } = self;
        let days = match days {
            Days::Every => "every day".to_owned(),
            Days::Workdays => "on workdays".to_owned(),
            Days::Weekend => "at weekends".to_owned(),
            Days::Nth(n) => format!("every {n} days"),
            Days::Cold => "in the cold season".to_owned(),
            Days::Warm => "in the warm season".to_owned(),
        };
        format!("at {} h {purpose:?} for {} min {days}", hour.si(), minutes.si()).to_ascii_lowercase()
    }
}

/// A habit.
pub(super) const fn habit(hour: f64, purpose: Use, minutes: f64, days: Days) -> Habit {
    Habit { hour, purpose, minutes, days }
}

/// Why the habits are as they are.
pub(super) const HABITS: &str =
    "habits of households that do not exist, sized so that a sound heater serves them";

quantity::constants! {
    /// Washing hands or a cup.
    const HANDS: Constant<(f64, f64)> =
        Constant::new("hands: mixed flow and wanted temperature", (1.0, 100.0), "gpm, °F", Tag::Invented(HABITS));
    /// Washing up.
    const DISHES: Constant<(f64, f64)> =
        Constant::new("dishes: mixed flow and wanted temperature", (1.5, 110.0), "gpm, °F", Tag::Invented(HABITS));
    /// A shower; 105 °F is common practice.
    const SHOWER: Constant<(f64, f64)> =
        Constant::new("shower: mixed flow and wanted temperature", (2.0, 105.0), "gpm, °F", Tag::CommonPractice);
    /// Filling a tub.
    const BATH: Constant<(f64, f64)> =
        Constant::new("bath: mixed flow and wanted temperature", (4.0, 104.0), "gpm, °F", Tag::Invented(HABITS));
    /// The washing machine.
    const LAUNDRY: Constant<(f64, f64)> =
        Constant::new("laundry: flow and wanted temperature", (3.0, 120.0), "gpm, °F", Tag::Invented(HABITS));
    /// Washing somebody's hair.
    const SHAMPOO: Constant<(f64, f64)> =
        Constant::new("hair: mixed flow and wanted temperature", (1.5, 102.0), "gpm, °F", Tag::Invented(HABITS));
    /// Water stored by a sound heater.
    pub(super) const STORED: Constant = Constant::new(
        "temperature of stored water that habits are fitted to",
        120.0,
        "°F",
        Tag::Published("two owner's manuals of storage water heaters, factory setting of the thermostat"),
    );
    /// Share of the nominal volume that comes out hot.
    pub(super) const USABLE: Constant = Constant::new("usable share of the nominal volume", 0.70, "", Tag::CommonPractice);
    /// A watt-hour as heat.
    pub(super) const BTU_PER_WATT_HOUR: Constant =
        Constant::new("heat of a watt-hour", 3.412, "Btu/(W·h)", Tag::Published("NIST SP 811, appendix B"));
    /// Heat that warms a gallon by a degree.
    pub(super) const BTU_PER_GALLON: Constant =
        Constant::new("heat that warms a gallon by a degree", 8.33, "Btu/(gal·°F)", Tag::CommonPractice);
    /// Least rise that a recovery is worked out for.
    pub(super) const LEAST_RISE: Constant =
        Constant::new("least rise in a recovery", 30.0, "°F", Tag::Model("keeps a warm main from dividing by little"));
    /// The fullest ordinary hour over the heater's nominal volume.
    pub(super) const FULLEST_HOUR: Constant =
        Constant::new("fullest ordinary hour over the nominal volume", 0.38, "", Tag::Invented(HABITS));
    /// Least and most by which ordinary draws are stretched.
    pub(super) const STRETCH: Constant<(f64, f64)> =
        Constant::new("least and most stretch of ordinary draws", (0.4, 2.0), "", Tag::Invented(HABITS));
    /// The big evening over the best hour.
    pub(super) const EVENING: Constant = Constant::new("big evening over the best hour", 0.58, "", Tag::Invented(HABITS));
    /// Most that the big evening takes of the nominal volume.
    pub(super) const EVENING_MOST: Constant =
        Constant::new("most of the nominal volume in the big evening", 0.62, "", Tag::Invented(HABITS));
    /// Days of a week.
    pub(super) const WEEK: Constant<u16> = Constant::new("days of a week", 7, "d", Tag::Published("ISO 8601"));
    /// First day of the weekend, Monday being 0.
    pub(super) const SATURDAY: Constant<u16> = Constant::new("Saturday, Monday being 0", 5, "", Tag::Published("ISO 8601"));
    /// Outdoor air below the first is the cold season, above the second the warm one.
    pub(super) const SEASONS: Constant<(f64, f64)> = Constant::new(
        "outdoor air of the day below which it is the cold season, above which the warm one",
        (45.0, 65.0),
        "°F",
        Tag::Model("heating and cooling degree days are counted from 65 °F; well below it people take to the tub"),
    );
    /// Hours by which a draw comes early or late.
    pub(super) const PUNCTUALITY: Constant = Constant::new("a draw early or late", 0.2, "h", Tag::Invented(HABITS));
    /// Shortest and longest of a draw over its habit.
    pub(super) const LENGTH: Constant<(f64, f64)> =
        Constant::new("shortest and longest draw over its habit", (0.8, 1.2), "", Tag::Invented(HABITS));
    /// First and last hour of the big evening.
    pub(super) const EVENING_HOURS: Constant<(f64, f64)> =
        Constant::new("first and last hour of the big evening", (18.0, 21.0), "h", Tag::Invented(HABITS));
    /// Share of the big evening's hot water that the tub takes.
    pub(super) const TUB_SHARE: Constant = Constant::new("the tub's share of the big evening", 0.4, "", Tag::Invented(HABITS));
    /// Longest tub filling and longest shower of the big evening.
    pub(super) const EVENING_LONGEST: Constant<(f64, f64)> =
        Constant::new("longest tub filling and shower", (9.0, 10.0), "min", Tag::Invented(HABITS));
    /// From one to the next in the big evening.
    pub(super) const PAUSE: Constant = Constant::new("from one shower to the next", 0.04, "h", Tag::Invented(HABITS));
    /// Below the wanted temperature by this, water is called cold.
    pub(super) const COLD: Constant<Kelvins> = Constant::of(
        "below the wanted temperature, called cold",
        Kelvins::fahrenheit(5.0),
        Tag::Model("a shower at 100 °F"),
    );
    /// Water that makes one pull the hand away.
    pub(super) const BURNS: Constant<Temperature> = Constant::of(
        "water that makes one pull the hand away",
        Temperature::fahrenheit(131.0),
        Tag::Published("CPSC memorandum, 15 September 1978: 131 °F burns for good in 25 s, first degree in 5 s"),
    );
    /// Below this nobody calls it warm.
    pub(super) const WARM: Constant<Temperature> = Constant::of(
        "below this nobody calls water warm",
        Temperature::fahrenheit(92.0),
        Tag::Model("temperature of skin"),
    );
}
