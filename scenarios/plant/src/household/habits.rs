//! When each household draws hot water, by hour and day, and how much: its habits, stretched so that
//! the heater suits the house as long as nothing is wrong.

use quantity::{Draw, Flow, Seconds, Temperature, Volume};

use super::customs::*;
use crate::home::Home;
use crate::waterworks::Tap;

/// One draw somebody is about to make.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct Wish {
    /// Time of day.
    pub at: Seconds,
    /// What for.
    pub(super) purpose: Use,
    /// At which tap.
    pub tap: Tap,
    /// Mixed flow.
    pub flow: Flow,
    /// Mixed volume.
    pub volume: Volume,
    /// Wanted at the tap.
    pub wanted: Temperature,
}

/// How a household's draws are stretched to its heater.
#[derive(Clone, Copy, PartialEq, Debug)]
pub(super) struct Fit {
    /// Factor on every ordinary draw.
    pub daily: f64,
    /// Hot water of the big evening, once a week.
    pub evening: Volume,
}

/// Hot water a heater gives in its best hour: the usable share of the nominal volume and what it makes
/// meanwhile.
fn best_hour(home: &Home) -> Volume {
    let plate = &home.plant.plate;
    let rise = Temperature::fahrenheit(STORED.get()).above(home.plant.plumbing.inlet).to_fahrenheit();
    let recovery = plate.element.watts.get() * BTU_PER_WATT_HOUR.get()
        / (BTU_PER_GALLON.get() * rise.max(LEAST_RISE.get()));
    Volume::gallons(USABLE.get() * plate.nominal.to_gallons() + recovery)
}

/// Hot share of a mixed draw when the tank stands at its setting.
fn hot_share(wanted_f: f64, inlet: Temperature) -> f64 {
    let inlet = inlet.to_fahrenheit();
    ((wanted_f - inlet) / (STORED.get() - inlet)).clamp(0.0, 1.0)
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
    let daily = FULLEST_HOUR.get() * home.plant.plate.nominal.to_gallons() / fullest;
    let most = home.plant.plate.nominal * EVENING_MOST.get();
    let (least, longest) = STRETCH.get();
    let evening = best * EVENING.get();
    Fit { daily: daily.clamp(least, longest), evening: if evening < most { evening } else { most } }
}

/// The draws of one day in order. `day` counts from the first day of the week lived through, `weekday` from
/// Monday; the big evening falls on `big_day`.
pub(super) fn wishes(home: &Home, day: u16, weekday: u16, big_day: u16, draw: &mut Draw) -> Vec<Wish> {
    let fit = fit(home);
    let weekend = weekday % WEEK.get() >= SATURDAY.get();
    let big = day == big_day && (weekend || !home.setting.household.weekends_only());
    let outdoors = home.setting.climate.outdoors(home.setting.day).to_fahrenheit();
    let (cold, warm) = SEASONS.get();
    let mut all = Vec::new();
    for (i, habit) in home.setting.household.habits().iter().enumerate() {
        let (early, (least, most)) = (PUNCTUALITY.get(), LENGTH.get());
        let (shift, stretch) = (draw.between(-early, early), draw.between(least, most));
        let today = match habit.days {
            Days::Every => true,
            Days::Workdays => !weekend,
            Days::Weekend => weekend,
            Days::Nth(n) => (day + i as u16).is_multiple_of(n),
            Days::Cold => outdoors < cold,
            Days::Warm => outdoors > warm,
        };
        let (first, last) = EVENING_HOURS.get();
        // The big evening takes the place of the tubs and showers of those hours.
        let washing = matches!(habit.purpose, Use::Bath | Use::Shower);
        if today && !(big && washing && (first..last).contains(&habit.hour)) {
            all.push(wish(
                habit.hour + shift,
                habit.purpose,
                habit.minutes * stretch * fit.daily * home.demand,
            ));
        }
    }
    if big {
        evening(home, fit.evening * home.demand, &mut all);
    }
    all.sort_by(|a, b| a.at.0.total_cmp(&b.at.0));
    all
}

/// The big evening: a tub, then showers one after the other until the planned hot water is spent.
fn evening(home: &Home, hot: Volume, all: &mut Vec<Wish>) {
    let mut left = hot.to_gallons();
    let (mut hour, last) = EVENING_HOURS.get();
    let (longest_bath, longest_shower) = EVENING_LONGEST.get();
    let mut purpose = Use::Bath;
    while left > 1.0 && hour < last {
        let (_, gpm, wanted) = purpose.manner();
        let share = hot_share(wanted, home.plant.plumbing.inlet);
        let most = if purpose == Use::Bath {
            (TUB_SHARE.get() * hot.to_gallons() / (gpm * share)).min(longest_bath)
        } else {
            longest_shower
        };
        let minutes = (left / (gpm * share)).min(most);
        left -= minutes * gpm * share;
        all.push(wish(hour, purpose, minutes));
        hour += Seconds::minutes(minutes).to_hours() + PAUSE.get();
        purpose = Use::Shower;
    }
}

/// Hands washed by somebody who has just come home.
pub(super) fn hands_at_kitchen() -> Wish {
    wish(0.0, Use::Hands, 1.0)
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
