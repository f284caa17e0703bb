//! What the people of the house can tell: facts of their simulated week, not sentences.

use quantity::{Seconds, Temperature, Volume};
use serde::{Deserialize, Serialize};

use crate::Location;
use crate::named::named;
use crate::waterworks::Tap;

named! {
    /// A question to the customer.
    Question {
        /// When was the water last as it should be?
        LastGood = "last-good",
        /// Does it start hot and run out, or never get hot?
        HowMuch = "how-much",
        /// Is it ever too hot?
        TooHot = "too-hot",
        /// Has a breaker tripped, has anybody reset anything?
        Tripped = "tripped",
        /// Has anybody worked on it, or changed a setting?
        WhoTouched = "who-touched",
        /// Any water on the floor, any drip?
        Water = "water",
        /// Any noise, any smell, any colour in the water?
        NoiseSmell = "noise-smell",
        /// How many people, who uses most, when?
        People = "people",
        /// Does it happen at every tap?
        EveryTap = "every-tap",
        /// How is the electricity bill?
        Bill = "bill",
        /// How old is the heater?
        Age = "age",
        /// Is there any other supply to it: a timer, an off-peak meter, solar panels?
        OtherSupply = "other-supply",
        /// Is anything else wrong in the house: lights, a tingle?
        House = "house",
        /// At which tap was it noticed first?
        WhichTap = "which-tap",
        /// At what time of the day is it worst?
        TimeOfDay = "time-of-day",
        /// Every time, or now and then?
        HowOften = "how-often",
        /// All at once, or bit by bit?
        Sudden = "sudden",
        /// When it has failed, how long until there is hot water again?
        BackAgain = "back-again",
        /// How is the water bill?
        WaterBill = "water-bill",
        /// Any noise: rumbling, hissing, spitting taps?
        Noise = "noise",
        /// Has any part been changed?
        Parts = "parts",
        /// What may it cost?
        Cost = "cost",
        /// Where does the heater stand?
        Stands = "stands",
        /// Is the flow as strong as ever?
        Strong = "strong",
        /// Is the water clear?
        Clear = "clear",
    }
}

named! {
    /// The class of a complaint, as the people feel it.
    Symptom {
        /// Hardly anything warm at all.
        NoHot = "no-hot",
        /// Hot at first, gone too soon.
        RunsOut = "runs-out",
        /// Never more than lukewarm.
        Lukewarm = "lukewarm",
        /// Dangerously hot.
        TooHot = "too-hot",
        /// A breaker trips.
        Trips = "trips",
        /// Water where none should be.
        Wet = "wet",
        /// A drip from the relief valve's pipe.
        ReliefDrips = "relief-drips",
        /// Lights too bright or too dim.
        Lights = "lights",
        /// A tingle at the taps.
        Tingle = "tingle",
        /// Brown hot water.
        Rusty = "rusty",
        /// Hot water smells of rotten eggs.
        Eggs = "eggs",
        /// Nothing at the taps, but it takes long to get hot again.
        Slow = "slow",
        /// A noise out of the heater.
        Noise = "noise",
        /// A smell.
        Smell = "smell",
        /// A bill.
        Bill = "bill",
        /// Nothing that anybody noticed: somebody is to have a look at it.
        Nothing = "nothing",
    }
}

/// How much hot water there is.
#[derive(Clone, Copy, PartialEq, Debug, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case", tag = "much")]
pub enum HowMuch {
    /// Never warm.
    Never,
    /// Runs out during a shower of this length.
    RunsOut {
        /// Into the shower.
        after: Seconds,
    },
    /// Never above about this.
    Lukewarm {
        /// About.
        about: Temperature,
    },
    /// Enough.
    Enough,
}

named! {
    /// Who meddled.
    Meddler {
        /// Nobody known of.
        Nobody = "nobody",
        /// Somebody of the house.
        Household = "household",
        /// A neighbour.
        Neighbour = "neighbour",
        /// A tradesperson, some time ago.
        Tradesperson = "tradesperson",
    }
}

/// An answer.
#[derive(Clone, Copy, PartialEq, Debug, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case", tag = "answer")]
pub enum Answer {
    /// Days ago; `None` when nobody remembers.
    LastGood {
        /// Days.
        days: Option<u16>,
    },
    /// How much hot water there is.
    HowMuch(HowMuch),
    /// The hottest anybody felt, where it burns.
    TooHot {
        /// About.
        hottest: Option<Temperature>,
    },
    /// Trips of the breaker and pushes of the button in the week.
    Tripped {
        /// Breaker trips.
        breaker: u16,
        /// Times the heater's red button was pushed.
        button: u16,
        /// By whom.
        by: Meddler,
    },
    /// Who meddled with it.
    WhoTouched {
        /// Who.
        who: Meddler,
        /// A dial was turned.
        dial: bool,
    },
    /// Water found.
    Water {
        /// About how much a day; none when dry.
        a_day: Volume,
        /// At the relief valve's pipe rather than the floor.
        at_relief: bool,
    },
    /// Noises and smells.
    NoiseSmell {
        /// A smell of something burnt.
        burnt: bool,
        /// Hot water smells of rotten eggs.
        eggs: bool,
        /// Hot water comes brown.
        rusty: bool,
    },
    /// The people.
    People {
        /// Adults.
        adults: u16,
        /// Children.
        children: u16,
        /// Guests or a new tub lately: demand over what the house was fitted for.
        demand: f64,
    },
    /// It happens at every tap.
    EveryTap {
        /// As far as they know.
        same: bool,
    },
    /// The tap at which it was noticed first.
    WhichTap {
        /// Which; `None` when nobody remembers.
        tap: Option<Tap>,
    },
    /// When it is worst.
    TimeOfDay {
        /// Part of the day; `None` when it is the same all day.
        part: Option<DayPart>,
    },
    /// How often it happens.
    HowOften {
        /// Draws of ten.
        of_ten: u16,
    },
    /// How it began.
    Sudden {
        /// From one draw to the next.
        sudden: bool,
    },
    /// Time from failing to hot water again.
    BackAgain {
        /// About; `None` when it did not come back.
        after: Option<Seconds>,
    },
    /// The water bill against the usual.
    WaterBill {
        /// Factor.
        factor: f64,
    },
    /// Noises.
    Noise {
        /// A rumble or popping while it heats.
        rumbles: bool,
        /// A hiss or a rush at the relief valve's pipe.
        hisses: bool,
        /// Taps spit.
        spits: bool,
        /// A pipe ticks when hot water runs.
        ticks: bool,
    },
    /// Parts changed before the call.
    Parts {
        /// By whom; nobody known of.
        who: Meddler,
    },
    /// What it may cost.
    Cost {
        /// Dollars beyond which they want to be asked; `None` when they leave it open.
        ask_above: Option<u16>,
    },
    /// Where the heater stands.
    Stands {
        /// Where.
        location: Location,
    },
    /// Flow of the hot side.
    Strong {
        /// Share of a sound one's.
        share: f64,
    },
    /// The water's look.
    Clear {
        /// Grit or flakes in it.
        grit: bool,
    },
    /// The bill against the same weeks before.
    Bill {
        /// Factor on the usual electricity of the heater.
        factor: f64,
    },
    /// Age.
    Age {
        /// Years.
        years: u16,
    },
    /// What else is wrong in the house.
    House {
        /// Lights are dim or out.
        dim: bool,
        /// Lights are too bright.
        bright: bool,
        /// A tap or the tank tingles.
        tingle: bool,
    },
    /// Other supplies known of.
    OtherSupply {
        /// They know of one.
        known: bool,
    },
}

named! {
    /// A part of the day.
    DayPart {
        /// Before ten.
        Morning = "morning",
        /// From ten to five.
        Midday = "midday",
        /// From five to ten.
        Evening = "evening",
        /// Later, or before five.
        Night = "night",
    }
}

/// Everything the people can tell.
#[derive(Clone, PartialEq, Debug, Serialize, Deserialize)]
pub struct Account {
    /// What they called about.
    pub symptom: Symptom,
    /// In which of several ways they put it.
    #[serde(default)]
    pub manner: u16,
    /// What they say when the door opens, in order.
    pub opening: Vec<Answer>,
    /// Every answer, by question in the order of `Question::ALL`.
    pub answers: Vec<Answer>,
}

impl Account {
    /// The answer to a question.
    pub fn answer(&self, question: Question) -> Option<Answer> {
        self.answers.get(question as usize).copied()
    }
}
