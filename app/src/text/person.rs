//! The customer's questions and answers. Answers are put together from the numbers of the simulated week.

use plant::household::{Answer, HowMuch, Meddler, Question};

use crate::units::{self, Units};

/// A question.
pub const fn question(question: Question) -> &'static str {
    match question {
        Question::LastGood => "When was it last as it should be?",
        Question::HowMuch => "Does it run out, or never get hot?",
        Question::TooHot => "Is it ever too hot?",
        Question::Tripped => "Has a breaker tripped, was a button pushed?",
        Question::WhoTouched => "Has anybody worked on it or turned a dial?",
        Question::Water => "Any water on the floor, any drip?",
        Question::NoiseSmell => "Any noise or smell?",
        Question::People => "Who lives here, who uses most?",
        Question::EveryTap => "Is it the same at every tap?",
        Question::Bill => "How is the electricity bill?",
        Question::Age => "How old is the heater?",
        Question::OtherSupply => "Is there a timer or another supply to it?",
    }
}

/// An answer in the customer's words.
pub fn answer(answer: Answer, units: Units) -> String {
    match answer {
        Answer::LastGood { days: None } => "I could not say. It has been like this for long.".into(),
        Answer::LastGood { days: Some(0) } => "It was fine until today.".into(),
        Answer::LastGood { days: Some(1) } => "It was fine until yesterday.".into(),
        Answer::LastGood { days: Some(days) } => format!("It was fine until {days} days ago."),
        Answer::HowMuch(much) => how_much(much, units),
        Answer::TooHot { hottest: None } => "No, it has never been too hot.".into(),
        Answer::TooHot { hottest: Some(t) } => {
            format!("Yes, it burns. About {}, I should think.", units.temperature(t))
        }
        Answer::Tripped { breaker, button, by } => tripped(breaker, button, by),
        Answer::WhoTouched { who, dial } => touched(who, dial),
        Answer::Water { a_day, at_relief } => water(units, a_day, at_relief),
        Answer::NoiseSmell { burnt: true } => "There has been a smell of something burnt.".into(),
        Answer::NoiseSmell { burnt: false } => "No, nothing we noticed.".into(),
        Answer::People { adults, children, demand } => people(adults, children, demand),
        Answer::EveryTap => "Yes, it is the same at every tap.".into(),
        Answer::Bill { factor } if factor > 1.15 => {
            format!("It went up: about {:.1} times what it was.", factor)
        }
        Answer::Bill { factor } if factor < 0.85 => "Lower than before, oddly.".into(),
        Answer::Bill { .. } => "Much as ever.".into(),
        Answer::Age { years: 1 } => "It is a year old.".into(),
        Answer::Age { years } => format!("It is {years} years old."),
        Answer::OtherSupply { known: true } => {
            "Yes, something was added to it. It has a switch of its own.".into()
        }
        Answer::OtherSupply { known: false } => "Not that we know of.".into(),
    }
}

fn how_much(much: HowMuch, units: Units) -> String {
    match much {
        HowMuch::Never => "It never gets hot. Not even warm.".into(),
        HowMuch::RunsOut { after } => {
            format!("It starts hot and is gone after about {} of shower.", units::duration(after))
        }
        HowMuch::Lukewarm { about } => {
            format!("It is never more than lukewarm, {} or so.", units.temperature(about))
        }
        HowMuch::Enough => "There is enough of it.".into(),
    }
}

const fn meddler(who: Meddler) -> &'static str {
    match who {
        Meddler::Nobody => "nobody",
        Meddler::Household => "one of us",
        Meddler::Neighbour => "a neighbour",
        Meddler::Tradesperson => "a tradesperson",
    }
}

fn times(count: u16) -> String {
    match count {
        1 => "once".into(),
        2 => "twice".into(),
        n => format!("{n} times"),
    }
}

fn tripped(breaker: u16, button: u16, by: Meddler) -> String {
    let breaker_part = (breaker > 0).then(|| format!("The breaker went {} this week.", times(breaker)));
    let button_part =
        (button > 0).then(|| format!("The red button was pushed {}, by {}.", times(button), meddler(by)));
    match (breaker_part, button_part) {
        (None, None) => "No, nothing like that.".into(),
        (Some(a), None) => a,
        (None, Some(b)) => b,
        (Some(a), Some(b)) => format!("{a} {b}"),
    }
}

fn touched(who: Meddler, dial: bool) -> String {
    match (who, dial) {
        (Meddler::Nobody, _) => "No, nobody has touched it.".into(),
        (who, true) => format!("Yes, {} turned a dial on it.", meddler(who)),
        (who, false) => format!("Yes, {} had it open.", meddler(who)),
    }
}

fn water(units: Units, a_day: quantity::Volume, at_relief: bool) -> String {
    if a_day.to_litres() < 0.01 {
        return "No, all dry.".into();
    }
    let amount = units.volume(a_day);
    if at_relief {
        format!("The pipe at its side drips, about {amount} a day.")
    } else {
        format!("Yes, there is water under it, about {amount} a day.")
    }
}

fn people(adults: u16, children: u16, demand: f64) -> String {
    let adults = if adults == 1 { "One grown-up".into() } else { format!("{adults} grown-ups") };
    let children = match children {
        0 => String::new(),
        1 => " and a child".into(),
        n => format!(" and {n} children"),
    };
    let more = if demand > 1.1 {
        format!(" We use a good deal more than we used to: guests, and a bigger tub. Some {demand:.1} times.")
    } else {
        String::new()
    };
    format!("{adults}{children}.{more}")
}
