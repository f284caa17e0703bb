//! When each household draws hot water, by hour and day, and how much: invented habits, sized so that the
//! heater suits the house as long as nothing is wrong.

use quantity::{Draw, Flow, Kelvins, Seconds, Temperature, Volume};

use super::HouseholdKind;
use crate::home::Home;
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
}

impl Use {
    /// Tap, mixed flow in gallons a minute, wanted temperature in °F. Flows a little below what the taps
    /// give wide open; 105 °F for a shower is common practice, no source.
    const fn manner(self) -> (Tap, f64, f64) {
        match self {
            Self::Hands => (Tap::Kitchen, 1.0, 100.0),
            Self::Dishes => (Tap::Kitchen, 1.5, 110.0),
            Self::Shower => (Tap::Shower, 2.0, 105.0),
            Self::Bath => (Tap::Bath, 4.0, 104.0),
            Self::Laundry => (Tap::Laundry, 3.0, 120.0),
        }
    }
}

/// One draw somebody is about to make.
#[derive(Clone, Copy, PartialEq, Debug)]
pub(super) struct Wish {
    /// Time of day.
    pub at: Seconds,
    /// What for.
    pub purpose: Use,
    /// At which tap.
    pub tap: Tap,
    /// Mixed flow.
    pub flow: Flow,
    /// Mixed volume.
    pub volume: Volume,
    /// Wanted at the tap.
    pub wanted: Temperature,
}

#[derive(Clone, Copy)]
enum Days {
    Every,
    Workdays,
    Weekend,
    /// Every so many days.
    Nth(u16),
}

struct Habit {
    /// Hour of the day.
    hour: f64,
    purpose: Use,
    /// Minutes of running water.
    minutes: f64,
    days: Days,
}

const fn habit(hour: f64, purpose: Use, minutes: f64, days: Days) -> Habit {
    Habit { hour, purpose, minutes, days }
}

use Days::{Every, Nth, Weekend, Workdays};
use Use::{Bath, Dishes, Hands, Laundry, Shower};

const SINGLE: &[Habit] = &[
    habit(6.75, Hands, 1.0, Workdays),
    habit(8.5, Hands, 1.5, Weekend),
    habit(12.8, Dishes, 2.0, Weekend),
    habit(19.4, Dishes, 3.0, Every),
    habit(21.3, Shower, 9.0, Every),
    habit(22.5, Hands, 1.0, Every),
];
const COUPLE: &[Habit] = &[
    habit(6.4, Shower, 7.0, Workdays),
    habit(6.8, Shower, 8.0, Workdays),
    habit(8.4, Shower, 8.0, Weekend),
    habit(9.1, Shower, 8.0, Weekend),
    habit(12.7, Hands, 1.0, Weekend),
    habit(18.9, Dishes, 4.0, Every),
    habit(20.5, Laundry, 4.0, Nth(3)),
    habit(22.3, Hands, 1.5, Every),
];
const FAMILY: &[Habit] = &[
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
];
const FULL_HOUSE: &[Habit] = &[
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
];

impl HouseholdKind {
    const fn habits(self) -> &'static [Habit] {
        match self {
            Self::Single => SINGLE,
            Self::Couple => COUPLE,
            Self::Family => FAMILY,
            Self::FullHouse => FULL_HOUSE,
        }
    }
}

/// How a household's draws are stretched to its heater.
#[derive(Clone, Copy, PartialEq, Debug)]
pub(super) struct Fit {
    /// Factor on every ordinary draw.
    pub daily: f64,
    /// Hot water of the big evening, once a week.
    pub evening: Volume,
}

/// Hot water a heater gives in its best hour: 0.70 of the nominal volume and what it makes meanwhile (trade
/// sheet 4.7, published rule of thumb; recovery as in 4.2).
fn best_hour(home: &Home) -> Volume {
    let plate = &home.plant.plate;
    let rise = Temperature::fahrenheit(120.0).above(home.plant.plumbing.inlet).to_fahrenheit().max(30.0);
    let recovery = plate.element.watts.get() * 3.412 / (8.33 * rise);
    Volume::gallons(0.70 * plate.nominal.to_gallons() + recovery)
}

/// Hot share of a mixed draw when the tank stands at 120 °F.
fn hot_share(wanted_f: f64, inlet: Temperature) -> f64 {
    let inlet = inlet.to_fahrenheit();
    ((wanted_f - inlet) / (120.0 - inlet)).clamp(0.0, 1.0)
}

/// A house is fitted for its people: their fullest ordinary hour takes two fifths of the heater's nominal
/// volume, and the big evening three fifths of its best hour (invented; a sound heater serves both).
pub(super) fn fit(home: &Home) -> Fit {
    let best = best_hour(home);
    let habits = home.setting.household.habits();
    let hot = |h: &Habit| {
        let (_, gpm, wanted) = h.purpose.manner();
        gpm * h.minutes * hot_share(wanted, home.plant.plumbing.inlet)
    };
    let hour = |from: &Habit| {
        habits.iter().filter(|h| (from.hour..from.hour + 1.0).contains(&h.hour)).map(hot).sum::<f64>()
    };
    let fullest = habits.iter().map(hour).fold(1.0, f64::max);
    let daily = 0.38 * home.plant.plate.nominal.to_gallons() / fullest;
    let most = home.plant.plate.nominal * 0.65;
    Fit { daily: daily.clamp(0.4, 2.0), evening: if best * 0.6 < most { best * 0.6 } else { most } }
}

/// The draws of one day in order. `day` counts from the first day of the week lived through, `weekday` from
/// Monday; the big evening falls on `big_day`.
pub(super) fn wishes(home: &Home, day: u16, weekday: u16, big_day: u16, draw: &mut Draw) -> Vec<Wish> {
    let fit = fit(home);
    let weekend = weekday % 7 >= 5;
    let mut all = Vec::new();
    for (i, habit) in home.setting.household.habits().iter().enumerate() {
        let (shift, stretch) = (draw.between(-0.2, 0.2), draw.between(0.8, 1.2));
        let today = match habit.days {
            Days::Every => true,
            Days::Workdays => !weekend,
            Days::Weekend => weekend,
            Days::Nth(n) => (day + i as u16).is_multiple_of(n),
        };
        if today {
            all.push(wish(
                habit.hour + shift,
                habit.purpose,
                habit.minutes * stretch * fit.daily * home.demand,
            ));
        }
    }
    if day == big_day {
        evening(home, fit.evening * home.demand, &mut all);
    }
    all.sort_by(|a, b| a.at.0.total_cmp(&b.at.0));
    all
}

/// The big evening: a tub, then showers one after the other until the planned hot water is spent.
fn evening(home: &Home, hot: Volume, all: &mut Vec<Wish>) {
    let mut left = hot.to_gallons();
    let mut hour = 18.0;
    let mut purpose = Bath;
    while left > 1.0 && hour < 21.0 {
        let (_, gpm, wanted) = purpose.manner();
        let share = hot_share(wanted, home.plant.plumbing.inlet);
        let most = if purpose == Bath { (0.4 * hot.to_gallons() / (gpm * share)).min(9.0) } else { 10.0 };
        let minutes = (left / (gpm * share)).min(most);
        left -= minutes * gpm * share;
        all.push(wish(hour, purpose, minutes));
        hour += minutes / 60.0 + 0.04;
        purpose = Shower;
    }
}

fn wish(hour: f64, purpose: Use, minutes: f64) -> Wish {
    let (tap, gpm, wanted) = purpose.manner();
    Wish {
        at: Seconds::hours(hour),
        purpose,
        tap,
        flow: Flow::gpm(gpm),
        volume: Volume::gallons(gpm * minutes),
        wanted: Temperature::fahrenheit(wanted),
    }
}

/// How far below the wanted temperature somebody calls water cold: 5 °F, so a shower at 100 °F (model).
pub(super) const COLD: Kelvins = Kelvins::fahrenheit(5.0);
/// Water that makes one pull the hand away: 131 °F burns within half a minute (trade sheet 8.1, published).
pub(super) const BURNS: Temperature = Temperature::fahrenheit(131.0);
/// Below this nobody calls it warm: 92 °F, skin temperature (model).
pub(super) const WARM: Temperature = Temperature::fahrenheit(92.0);
