//! Memory: it fades with the age of what happened, errs with the person, and keeps some things to itself.

use quantity::{Constant, Draw, Seconds, Tag, Volume};

use super::week::Week;
use super::{Answer, HowMuch, Meddler, Question};

/// Why memories are as they are.
const MEMORY: &str = "people who do not exist: the older, the vaguer";

quantity::constants! {
    /// After this a forgetful person has lost the day.
    const FADES: Constant<Seconds> =
        Constant::of("age at which a forgetful memory has faded", Seconds::days(7.0), Tag::Invented(MEMORY));
    /// Least that anybody errs, as a share of what a faded memory does.
    const ALWAYS: Constant = Constant::new("least share of a faded memory's error", 0.1, "", Tag::Invented(MEMORY));
    /// Largest error of a number, as a share.
    const SPREAD: Constant = Constant::new("largest error of a remembered number", 0.4, "", Tag::Invented(MEMORY));
    /// Chance that a faded memory is gone altogether.
    const GONE: Constant = Constant::new("chance that a faded memory is gone", 0.5, "", Tag::Invented(MEMORY));
    /// Years by which the age of a heater is told wrong.
    const YEARS: Constant = Constant::new("largest error of a heater's age", 3.0, "a", Tag::Invented(MEMORY));
    /// Bills are told to this.
    const TENTH: Constant = Constant::new("a bill is told to the nearest, of the usual", 0.1, "", Tag::Model("rounding memory"));
    /// Draws of which a frequency is told.
    const TEN: Constant<u16> = Constant::new("draws that a frequency is told of", 10, "", Tag::Model("nine times out of ten"));
}

/// What is left of an answer when these people give it. The same people give the same answer every time.
pub(super) fn recall(answer: Answer, question: Question, week: &Week, since: Seconds) -> Answer {
    let life = &week.life;
    let mut draw = Draw::new(u64::from(life.memory), question.name());
    let age = (since.0 / FADES.get().0).clamp(0.0, 1.0);
    let fade = (ALWAYS.get() + age).min(1.0) * life.forgets;
    let off = 1.0 + SPREAD.get() * fade * draw.between(-1.0, 1.0);
    let gone = draw.chance(GONE.get() * fade);
    match answer {
        Answer::LastGood { days: Some(days) } => {
            Answer::LastGood { days: (!gone).then(|| (f64::from(days) * off).round().max(1.0) as u16) }
        }
        Answer::HowMuch(HowMuch::RunsOut { after }) => {
            let minutes = (after.to_minutes() * off).round().max(1.0);
            Answer::HowMuch(HowMuch::RunsOut { after: Seconds::minutes(minutes) })
        }
        Answer::Tripped { breaker, button, .. } if life.hides && button > 0 => {
            Answer::Tripped { breaker, button: 0, by: Meddler::Nobody }
        }
        Answer::Tripped { breaker, button, by } if gone => {
            Answer::Tripped { breaker: breaker.min(1), button, by }
        }
        Answer::WhoTouched { .. } if life.hides => Answer::WhoTouched { who: Meddler::Nobody, dial: false },
        Answer::Parts { .. } if life.hides => Answer::Parts { who: Meddler::Nobody },
        Answer::Water { a_day, at_relief } => Answer::Water { a_day: Volume(a_day.0 * off), at_relief },
        Answer::EveryTap { .. } if life.assumes => Answer::EveryTap { same: true },
        Answer::Bill { .. } if life.assumes => Answer::Bill { factor: 1.0 },
        Answer::WaterBill { .. } if life.assumes => Answer::WaterBill { factor: 1.0 },
        Answer::Bill { factor } => Answer::Bill { factor: tenths(1.0 + (factor - 1.0) * off) },
        Answer::WaterBill { factor } => Answer::WaterBill { factor: tenths(1.0 + (factor - 1.0) * off) },
        Answer::Age { years } => {
            let told = f64::from(years) + YEARS.get() * life.forgets * draw.between(-1.0, 1.0);
            Answer::Age { years: told.round().max(1.0) as u16 }
        }
        Answer::WhichTap { .. } if gone => Answer::WhichTap { tap: None },
        Answer::TimeOfDay { .. } if gone => Answer::TimeOfDay { part: None },
        Answer::HowOften { of_ten } => {
            let told = (f64::from(of_ten) * off).round() as u16;
            // What happened is not told as never, nor as always what did not always happen.
            let (least, most) = (of_ten.min(1), if of_ten < TEN.get() { TEN.get() - 1 } else { of_ten });
            Answer::HowOften { of_ten: told.clamp(least, most) }
        }
        Answer::BackAgain { after: Some(after) } => {
            Answer::BackAgain { after: Some(Seconds::hours((after.to_hours() * off).round().max(1.0))) }
        }
        other => other,
    }
}

fn tenths(value: f64) -> f64 {
    (value / TENTH.get()).round() * TENTH.get()
}
