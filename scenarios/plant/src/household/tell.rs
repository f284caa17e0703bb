//! From what was lived through to what is told: the class of complaint, and answers that rounding memory gives.

use quantity::{Constant, Draw, Seconds, Tag, Temperature, Volume};

use super::recall::recall;
use super::week::{Drawn, Week};
use super::{Account, Answer, DayPart, HowMuch, Meddler, Question, Symptom};

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
    } else if week.rusty {
        Some(Symptom::Rusty)
    } else if week.eggs {
        Some(Symptom::Eggs)
    } else if week.burnt_smell {
        Some(Symptom::Smell)
    } else if weak(week) {
        Some(Symptom::Slow)
    } else if week.sweats {
        Some(Symptom::Wet)
    } else if week.rumbles || week.ticks || (week.away > 0 && week.spat) {
        Some(Symptom::Noise)
    } else if bill(week) >= DEAR.get() || water_bill(week) >= DEAR.get() {
        Some(Symptom::Bill)
    } else {
        None
    }
}

/// Everything the people can tell, as far as they remember and care to. Somebody who calls without a complaint
/// wants it looked at.
pub fn account(week: &Week) -> Account {
    let symptom = complaint(week).unwrap_or(Symptom::Nothing);
    let since = week.draws.iter().find(|d| bad(d)).map_or(Seconds(0.0), |d| week.lasted - d.at);
    let told = |question: &Question| recall(answer(week, symptom, *question), *question, week, since);
    let answers: Vec<Answer> = Question::ALL.iter().map(told).collect();
    let first = match symptom {
        Symptom::Wet | Symptom::ReliefDrips => Question::Water,
        Symptom::Trips => Question::Tripped,
        Symptom::TooHot => Question::TooHot,
        Symptom::Lights | Symptom::Tingle => Question::House,
        Symptom::Smell => Question::NoiseSmell,
        Symptom::Noise => Question::Noise,
        Symptom::Bill if bill(week) >= DEAR.get() => Question::Bill,
        Symptom::Bill => Question::WaterBill,
        Symptom::Nothing => Question::Age,
        Symptom::Rusty | Symptom::Eggs => Question::NoiseSmell,
        Symptom::NoHot | Symptom::RunsOut | Symptom::Lukewarm | Symptom::Slow => Question::HowMuch,
    };
    let second = if symptom == Symptom::TooHot && how_much(week, symptom) == HowMuch::Never {
        Question::HowMuch
    } else {
        Question::LastGood
    };
    let opening = [first, second].iter().filter_map(|q| answers.get(*q as usize).copied()).collect();
    let manner = Draw::new(u64::from(week.life.memory), "manner").index(usize::from(MANNERS.get())) as u16;
    Account { symptom, manner, opening, answers }
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
            let touched = dial || week.worked.touched || week.odd_part;
            Answer::WhoTouched { who: if touched { week.life.meddler } else { Meddler::Nobody }, dial }
        }
        Question::Water => water(week),
        Question::NoiseSmell => {
            Answer::NoiseSmell { burnt: week.burnt_smell, eggs: week.eggs, rusty: week.rusty }
        }
        Question::People => {
            let (adults, children) = week.kind.people();
            Answer::People { adults, children, demand: (week.demand * 2.0).round() / 2.0 }
        }
        Question::EveryTap => Answer::EveryTap { same: every_tap(week) },
        Question::WhichTap => Answer::WhichTap { tap: week.draws.iter().find(|d| bad(d)).map(|d| d.tap) },
        Question::TimeOfDay => Answer::TimeOfDay { part: worst_part(week) },
        Question::HowOften => Answer::HowOften { of_ten: of_ten(week) },
        Question::Sudden => Answer::Sudden { sudden: sudden(week) },
        Question::BackAgain => Answer::BackAgain { after: back_again(week) },
        Question::WaterBill => Answer::WaterBill { factor: nearest(water_bill(week), TENTHS.get()) },
        Question::Noise => Answer::Noise {
            rumbles: week.rumbles,
            hisses: week.relief > SEEN_AT_PIPE.get(),
            spits: week.spits || week.spat,
            ticks: week.ticks,
        },
        Question::Parts => {
            let changed = week.odd_part || week.worked.changed;
            Answer::Parts { who: if changed { week.life.meddler } else { Meddler::Nobody } }
        }
        Question::Cost => Answer::Cost { ask_above: week.life.ask_above },
        Question::Stands => Answer::Stands { location: week.location },
        Question::Strong => Answer::Strong { share: nearest(week.strong, TENTHS.get()) },
        Question::Clear => Answer::Clear { grit: week.grit },
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
    let about = |draws: &mut dyn Iterator<Item = &Drawn>| {
        let warmest = draws.map(|d| d.hottest.to_fahrenheit()).fold(0.0, f64::max);
        HowMuch::Lukewarm { about: Temperature::fahrenheit(nearest(warmest, NEAR.get())) }
    };
    if symptom == Symptom::Lukewarm {
        return about(&mut recent.iter().filter(|d| d.felt));
    }
    let mut times: Vec<f64> = week
        .draws
        .iter()
        .filter(|d| d.ran_out())
        .filter_map(|d| d.until_cold.map(Seconds::to_minutes))
        .collect();
    quantity::sort::sort(&mut times);
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
        // Nobody watched it run out: there was none left from the first.
        None if symptom == Symptom::RunsOut => {
            about(&mut recent.iter().filter(|d| d.lukewarm() || d.never_warm()))
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
    } else if week.sweats || week.beside {
        // Whose the drops are they cannot tell.
        Answer::Water { a_day: Volume::litres(LEAST_DRIP.get()), at_relief: false }
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

/// It takes much longer than it should to get hot again.
fn weak(week: &Week) -> bool {
    let power = week.energy.0 / week.calling.0.max(1.0);
    week.calling > Seconds::hours(1.0) && power < SLUGGISH.get() * week.plate.0
}

/// Water through the meter against what was drawn.
fn water_bill(week: &Week) -> f64 {
    let drawn = week.drawn.0.max(Volume::litres(1.0).0);
    (drawn + week.hidden.0 + week.floor.0 + week.relief.0) / drawn
}

/// Every tap that was felt went wrong at some time since the first did.
fn every_tap(week: &Week) -> bool {
    let Some(first) = week.draws.iter().position(bad) else { return true };
    let since = || week.draws.iter().skip(first).filter(|d| d.felt);
    since().all(|one| since().any(|other| other.tap == one.tap && bad(other)))
}

/// The part of the day in which most went wrong; none where it is all the same.
fn worst_part(week: &Week) -> Option<DayPart> {
    let (morning, midday, evening, night) = PARTS.get();
    let part = |d: &Drawn| {
        let hour = (d.at.to_days() - d.at.to_days().floor()) * HOURS.get();
        match () {
            () if hour < morning || hour >= night => DayPart::Night,
            () if hour < midday => DayPart::Morning,
            () if hour < evening => DayPart::Midday,
            () => DayPart::Evening,
        }
    };
    let wrong: Vec<DayPart> = week.draws.iter().filter(|d| bad(d)).map(part).collect();
    let most = DayPart::ALL.iter().copied().max_by_key(|p| wrong.iter().filter(|w| w == &p).count())?;
    let count = wrong.iter().filter(|w| **w == most).count();
    (wrong.len() > 1 && 2 * count > wrong.len()).then_some(most)
}

/// Of ten draws since the first that went wrong.
fn of_ten(week: &Week) -> u16 {
    let first = week.draws.iter().position(bad).unwrap_or(week.draws.len());
    let since = || week.draws.iter().skip(first).filter(|d| d.felt);
    let (all, wrong) = (since().count().max(1), since().filter(|d| bad(d)).count());
    let tenths = (usize::from(OF_TEN.get()) * wrong).div_ceil(all);
    u16::try_from(tenths).unwrap_or_default()
}

/// From the first draw that went wrong most of them did.
fn sudden(week: &Week) -> bool {
    2 * of_ten(week) > OF_TEN.get()
}

/// From the first draw that went wrong to the next that did not.
fn back_again(week: &Week) -> Option<Seconds> {
    let first = week.draws.iter().position(bad)?;
    let from = week.draws.get(first)?.at;
    let back = week.draws.iter().skip(first).find(|d| d.felt && !bad(d))?;
    Some(Seconds::hours((back.at - from).to_hours().round().max(1.0)))
}

fn nearest(value: f64, step: f64) -> f64 {
    (value / step).round() * step
}

quantity::constants! {
    /// Ways of putting the same complaint.
    const MANNERS: Constant<u16> = Constant::new("ways of putting a complaint", 3, "", Tag::Invented("ways of speaking"));
    /// Draws that a frequency is told of.
    const OF_TEN: Constant<u16> = Constant::new("draws that a frequency is told of", 10, "", Tag::Model("nine times out of ten"));
    /// Hours at which morning, midday, evening and night begin.
    const PARTS: Constant<(f64, f64, f64, f64)> = Constant::new(
        "hours at which morning, midday, evening and night begin",
        (5.0, 10.0, 17.0, 22.0),
        "h",
        Tag::Model("as people speak"),
    );
    /// Hours of a day.
    const HOURS: Constant = Constant::new("hours of a day", 24.0, "h", Tag::Computed("calendar"));
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
