//! From what was lived through to what is told: the class of complaint, and answers that rounding memory gives.

use quantity::{Constant, Seconds, Tag, Temperature, Volume};

use super::week::{Drawn, Week};
use super::{Account, Answer, HowMuch, Meddler, Question, Symptom};

/// What the people call about; `None` while they have nothing to complain of.
pub fn complaint(week: &Week) -> Option<Symptom> {
    let recent = recent(week);
    let count = |what: fn(&Drawn) -> bool| recent.iter().filter(|d| what(d)).count();
    let felt = recent.iter().filter(|d| d.felt).count().max(1);
    let ran_out = week.draws.iter().filter(|d| d.ran_out()).count();
    if a_day(week, week.floor) > week.location.noticed_leak() {
        Some(Symptom::Wet)
    } else if week.relief > SEEN_AT_PIPE.get() {
        Some(Symptom::ReliefDrips)
    } else if week.found_tripped > 0 && week.breaker_trips > 0 {
        Some(Symptom::Trips)
    } else if week.draws.iter().any(Drawn::burnt) {
        Some(Symptom::TooHot)
    } else if 2 * count(Drawn::never_warm) >= felt {
        Some(Symptom::NoHot)
    } else if 2 * count(Drawn::lukewarm) >= felt {
        Some(Symptom::Lukewarm)
    } else if ran_out > 0 || count(|d| d.lukewarm() || d.never_warm()) > 0 {
        Some(Symptom::RunsOut)
    } else if week.tingle {
        Some(Symptom::Tingle)
    } else if week.lights.contains(&true) {
        Some(Symptom::Lights)
    } else if week.burnt_smell || slow(week) {
        Some(Symptom::Slow)
    } else {
        None
    }
}

/// Everything the people can tell. Somebody who calls without a complaint at the taps calls because
/// something seems slow.
pub fn account(week: &Week) -> Account {
    let symptom = complaint(week).unwrap_or(Symptom::Slow);
    let answers: Vec<Answer> =
        Question::ALL.iter().map(|question| answer(week, symptom, *question)).collect();
    let first = match symptom {
        Symptom::Wet | Symptom::ReliefDrips => Question::Water,
        Symptom::Trips => Question::Tripped,
        Symptom::TooHot => Question::TooHot,
        Symptom::Lights | Symptom::Tingle => Question::House,
        Symptom::Slow if week.burnt_smell => Question::NoiseSmell,
        Symptom::Slow if slow(week) => Question::Bill,
        Symptom::NoHot | Symptom::RunsOut | Symptom::Lukewarm | Symptom::Slow => Question::HowMuch,
    };
    let second = if symptom == Symptom::TooHot && how_much(week, symptom) == HowMuch::Never {
        Question::HowMuch
    } else {
        Question::LastGood
    };
    let opening = [first, second].iter().filter_map(|q| answers.get(*q as usize).copied()).collect();
    Account { symptom, opening, answers }
}

fn answer(week: &Week, symptom: Symptom, question: Question) -> Answer {
    match question {
        Question::LastGood => Answer::LastGood { days: last_good(week) },
        Question::HowMuch => Answer::HowMuch(how_much(week, symptom)),
        Question::TooHot => Answer::TooHot { hottest: hottest(week) },
        Question::Tripped => Answer::Tripped {
            breaker: week.found_tripped,
            button: week.button_pushes,
            by: if week.closed_again + week.button_pushes > 0 { Meddler::Household } else { Meddler::Nobody },
        },
        Question::WhoTouched => {
            let dial = dials_turned(week);
            Answer::WhoTouched { who: if dial { week.life.meddler } else { Meddler::Nobody }, dial }
        }
        Question::Water => water(week),
        Question::NoiseSmell => Answer::NoiseSmell { burnt: week.burnt_smell },
        Question::People => {
            let (adults, children) = week.kind.people();
            Answer::People { adults, children, demand: (week.demand * 2.0).round() / 2.0 }
        }
        Question::EveryTap => Answer::EveryTap,
        Question::Bill => Answer::Bill { factor: bill(week) },
        Question::Age => Answer::Age { years: week.life.years },
        Question::House => {
            let [dim, bright] = week.lights;
            Answer::House { dim, bright, tingle: week.tingle }
        }
        Question::OtherSupply => Answer::OtherSupply { known: week.second_supply && week.life.knows_supply },
    }
}

/// Draws of the last day, or the last three where a day has fewer: what people think of first.
fn recent(week: &Week) -> &[Drawn] {
    let since = week.lasted.0 - Seconds::days(1.0).0;
    let first = week.draws.iter().position(|d| d.at.0 >= since).unwrap_or(week.draws.len());
    let first = first.min(week.draws.len().saturating_sub(RECENT.get()));
    week.draws.get(first..).unwrap_or(&[])
}

fn a_day(week: &Week, volume: Volume) -> Volume {
    volume / week.lasted.to_days().max(SHORTEST.get())
}

fn bad(drawn: &Drawn) -> bool {
    drawn.never_warm() || drawn.lukewarm() || drawn.ran_out() || drawn.burnt()
}

/// Days since the first thing that went wrong; nobody remembers what has been so all along.
fn last_good(week: &Week) -> Option<u16> {
    let first = week.draws.iter().find(|d| bad(d)).map_or(0.0, |d| d.at.0);
    let all_along = week.lasted.0 >= week.longest.0 && first < Seconds::days(1.0).0;
    (!all_along).then(|| (week.lasted - Seconds(first)).to_days().round().max(1.0) as u16)
}

fn how_much(week: &Week, symptom: Symptom) -> HowMuch {
    let recent = recent(week);
    let felt = recent.iter().filter(|d| d.felt).count().max(1);
    let never = recent.iter().filter(|d| d.never_warm()).count();
    if symptom == Symptom::NoHot || 2 * never >= felt {
        return HowMuch::Never;
    }
    if symptom == Symptom::Lukewarm {
        let warmest = recent.iter().filter(|d| d.felt).map(|d| d.hottest.to_fahrenheit()).fold(0.0, f64::max);
        return HowMuch::Lukewarm { about: Temperature::fahrenheit(nearest(warmest, NEAR.get())) };
    }
    let mut times: Vec<f64> = week
        .draws
        .iter()
        .filter(|d| d.ran_out())
        .filter_map(|d| d.until_cold.map(Seconds::to_minutes))
        .collect();
    times.sort_by(f64::total_cmp);
    match times.get(times.len() / 2) {
        Some(m) => {
            let (minute, two, coarse) = STEPS.get();
            let step = if *m <= minute {
                1.0
            } else if *m <= two {
                2.0
            } else {
                coarse
            };
            HowMuch::RunsOut { after: Seconds::minutes(nearest(*m, step).max(1.0)) }
        }
        None => HowMuch::Enough,
    }
}

fn hottest(week: &Week) -> Option<Temperature> {
    let hottest =
        week.draws.iter().filter(|d| d.burnt()).map(|d| d.hottest.to_fahrenheit()).fold(0.0, f64::max);
    (hottest > 0.0).then(|| Temperature::fahrenheit(nearest(hottest, ROUGHLY.get())))
}

fn water(week: &Week) -> Answer {
    let (floor, relief) = (a_day(week, week.floor), a_day(week, week.relief));
    if floor > week.location.noticed_leak() {
        Answer::Water { a_day: Volume::litres(nearest(floor.to_litres(), 1.0).max(1.0)), at_relief: false }
    } else if week.relief > SEEN_AT_PIPE.get() {
        let litres = nearest(relief.to_litres(), LEAST_DRIP.get()).max(LEAST_DRIP.get());
        Answer::Water { a_day: Volume::litres(litres), at_relief: true }
    } else {
        Answer::Water { a_day: Volume(0.0), at_relief: false }
    }
}

fn dials_turned(week: &Week) -> bool {
    week.dials.iter().any(|dial| (dial.to_fahrenheit() - FACTORY.get().to_fahrenheit()).abs() > 2.0)
}

/// Electricity against what the same days should have taken, by tenths.
fn bill(week: &Week) -> f64 {
    if week.usual.0 > 0.0 { nearest(week.energy.0 / week.usual.0, TENTHS.get()) } else { 1.0 }
}

/// It takes much longer than it should to get hot again, or the bill is half as high again.
fn slow(week: &Week) -> bool {
    let power = week.energy.0 / week.calling.0.max(1.0);
    let weak = week.calling > Seconds::hours(1.0) && power < SLUGGISH.get() * week.plate.0;
    weak || bill(week) >= DEAR.get()
}

fn nearest(value: f64, step: f64) -> f64 {
    (value / step).round() * step
}

quantity::constants! {
    /// Draws people think of when a day has fewer.
    const RECENT: Constant<usize> = Constant::new("draws people think of first", 3, "", Tag::Model("memory is short"));
    /// Shortest time a day's water is reckoned from.
    const SHORTEST: Constant =
        Constant::new("shortest time that a day's water is reckoned from", 0.25, "d", Tag::Model("a night"));
    /// Lukewarm is told to this.
    const NEAR: Constant = Constant::new("lukewarm is told to the nearest", 5.0, "°F", Tag::Model("rounding memory"));
    /// Too hot is told to this.
    const ROUGHLY: Constant = Constant::new("too hot is told to the nearest", 10.0, "°F", Tag::Model("rounding memory"));
    /// Minutes told by the minute, minutes told by twos, and the step beyond.
    const STEPS: Constant<(f64, f64, f64)> = Constant::new(
        "minutes told by one, by two, and the step beyond",
        (5.0, 12.0, 5.0),
        "min",
        Tag::Model("rounding memory"),
    );
    /// A drip is told to this.
    const LEAST_DRIP: Constant = Constant::new("a drip is told to the nearest", 0.1, "L", Tag::Model("rounding memory"));
    /// A bill is told in tenths of the usual.
    const TENTHS: Constant =
        Constant::new("a bill is told to the nearest, of the usual", 0.1, "", Tag::Model("rounding memory"));
    /// A bill that is noticed.
    const DEAR: Constant = Constant::new("bill over the usual that is noticed", 1.5, "", Tag::Model("half as high again"));
    /// Both dials as the factory leaves them.
    const FACTORY: Constant<Temperature> = Constant::of(
        "factory setting of the dials, as people know it",
        Temperature::fahrenheit(120.0),
        Tag::Published("two owner's manuals of storage water heaters, thermostat setting"),
    );
    /// Below this share of its rated power a heater is felt to take long.
    const SLUGGISH: Constant = Constant::new(
        "share of rated power below which a heater feels slow",
        0.85,
        "",
        Tag::Model("208 V on a 240 V element gives 0.75"),
    );
    /// Water that leaves a mark under the relief valve's pipe.
    const SEEN_AT_PIPE: Constant<Volume> =
        Constant::of("water told as a drip at the relief pipe", Volume::litres(0.1), Tag::Model("a mark of lime"));
}
