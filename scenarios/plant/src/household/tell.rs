//! From what was lived through to what is told: the class of complaint, and answers that rounding memory gives.

use quantity::{Seconds, Temperature, Volume};

use super::week::{Drawn, Week};
use super::{Account, Answer, HowMuch, Meddler, Question, Symptom};

/// What the people call about; `None` while they have nothing to complain of.
pub fn complaint(week: &Week) -> Option<Symptom> {
    let recent = recent(week);
    let count = |what: fn(&Drawn) -> bool| recent.iter().filter(|d| what(d)).count();
    let felt = recent.iter().filter(|d| d.felt).count().max(1);
    let ran_out = week.draws.iter().filter(|d| d.ran_out()).count();
    if a_day(week, week.floor) > SEEN_ON_FLOOR {
        Some(Symptom::Wet)
    } else if week.relief > SEEN_AT_PIPE {
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
        Question::OtherSupply => Answer::OtherSupply { known: week.second_supply && week.life.knows_supply },
    }
}

/// Draws of the last day, or the last three where a day has fewer: what people think of first.
fn recent(week: &Week) -> &[Drawn] {
    let since = week.lasted.0 - 86_400.0;
    let first = week.draws.iter().position(|d| d.at.0 >= since).unwrap_or(week.draws.len());
    let first = first.min(week.draws.len().saturating_sub(3));
    week.draws.get(first..).unwrap_or(&[])
}

fn a_day(week: &Week, volume: Volume) -> Volume {
    volume / (week.lasted.0 / 86_400.0).max(0.25)
}

fn bad(drawn: &Drawn) -> bool {
    drawn.never_warm() || drawn.lukewarm() || drawn.ran_out() || drawn.burnt()
}

/// Days since the first thing that went wrong; nobody remembers what has been so all along.
fn last_good(week: &Week) -> Option<u16> {
    let first = week.draws.iter().find(|d| bad(d)).map_or(0.0, |d| d.at.0);
    let all_along = week.lasted.0 >= week.longest.0 && first < 86_400.0;
    (!all_along).then(|| ((week.lasted.0 - first) / 86_400.0).round().max(1.0) as u16)
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
        return HowMuch::Lukewarm { about: Temperature::fahrenheit(nearest(warmest, 5.0)) };
    }
    let mut times: Vec<f64> = week
        .draws
        .iter()
        .filter(|d| d.ran_out())
        .filter_map(|d| d.until_cold.map(Seconds::to_minutes))
        .collect();
    times.sort_by(f64::total_cmp);
    match times.get(times.len() / 2) {
        // Minutes by the minute up to five, then by twos, then by fives.
        Some(m) => {
            let step = if *m <= 5.0 {
                1.0
            } else if *m <= 12.0 {
                2.0
            } else {
                5.0
            };
            HowMuch::RunsOut { after: Seconds::minutes(nearest(*m, step).max(1.0)) }
        }
        None => HowMuch::Enough,
    }
}

fn hottest(week: &Week) -> Option<Temperature> {
    let hottest =
        week.draws.iter().filter(|d| d.burnt()).map(|d| d.hottest.to_fahrenheit()).fold(0.0, f64::max);
    (hottest > 0.0).then(|| Temperature::fahrenheit(nearest(hottest, 10.0)))
}

fn water(week: &Week) -> Answer {
    let (floor, relief) = (a_day(week, week.floor), a_day(week, week.relief));
    if floor > SEEN_ON_FLOOR {
        Answer::Water { a_day: Volume::litres(nearest(floor.to_litres(), 1.0).max(1.0)), at_relief: false }
    } else if week.relief > SEEN_AT_PIPE {
        let litres = nearest(relief.to_litres(), 0.1).max(0.1);
        Answer::Water { a_day: Volume::litres(litres), at_relief: true }
    } else {
        Answer::Water { a_day: Volume(0.0), at_relief: false }
    }
}

fn dials_turned(week: &Week) -> bool {
    week.dials.iter().any(|dial| (dial.to_fahrenheit() - 120.0).abs() > 2.0)
}

/// Electricity against what the same days should have taken, by tenths.
fn bill(week: &Week) -> f64 {
    if week.usual.0 > 0.0 { nearest(week.energy.0 / week.usual.0, 0.1) } else { 1.0 }
}

/// It takes much longer than it should to get hot again, or the bill is half as high again.
fn slow(week: &Week) -> bool {
    let power = week.energy.0 / week.calling.0.max(1.0);
    let weak = week.calling.0 > 3600.0 && power < SLUGGISH * week.plate.0;
    weak || bill(week) >= 1.5
}

fn nearest(value: f64, step: f64) -> f64 {
    (value / step).round() * step
}

/// Below this share of its rated power a heater is felt to take long (model; 208 V on a 240 V element gives
/// 0.75, trade sheet 2.4).
const SLUGGISH: f64 = 0.85;
/// Water a day that is seen on a floor (model).
const SEEN_ON_FLOOR: Volume = Volume::litres(0.5);
/// Water that leaves a mark under the relief valve's pipe (model).
const SEEN_AT_PIPE: Volume = Volume::litres(0.1);
