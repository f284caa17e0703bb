//! Days lived in a house before somebody is called: draws, what was felt, what the people did about it.

use quantity::{Constant, Draw, Joules, Pressure, Seconds, Tag, Temperature, Volume, Watts};
use serde::{Deserialize, Serialize};

use super::customs::{BURNS, COLD, WARM, WEEK};
use super::{HouseholdKind, Meddler};
use crate::Location;
use crate::waterworks::Tap;

/// Why people are as they are.
const PEOPLE: &str = "people who do not exist, as different as neighbours are";

quantity::constants! {
    /// One in two.
    const EVEN: Constant =
        Constant::new("chance that somebody is handy, and that they know of a second supply", 0.5, "", Tag::Invented(PEOPLE));
    /// Handy people who know the red button.
    const KNOWS_BUTTON: Constant =
        Constant::new("chance that the handy know the red button", 0.4, "", Tag::Invented(PEOPLE));
    /// Most times a handy person closes a breaker.
    const MOST_RESETS: Constant<usize> =
        Constant::new("most times a breaker is closed again", 3, "", Tag::Invented(PEOPLE));
    /// Days from which the day of the big evening is drawn.
    const BIG_DAYS: Constant<usize> =
        Constant::new("days from which the big evening is drawn, from the third", 4, "", Tag::Invented(PEOPLE));
    /// Earliest and latest look at the load center, hours after the first cold water.
    const LOOKS: Constant<(f64, f64)> =
        Constant::new("earliest and latest look at the load center", (0.5, 6.0), "h", Tag::Invented(PEOPLE));
    /// Least annoyance that makes them call, and how many steps more it may take.
    const PATIENCE: Constant<(u16, u16)> =
        Constant::new("least annoyance that makes them call, and its steps", (4, 4), "", Tag::Invented(PEOPLE));
    /// Ages of heaters, from two years.
    const AGES: Constant<usize> = Constant::new("ages of heaters, from two years", 12, "", Tag::Invented(PEOPLE));
    /// Who keeps quiet.
    const HIDES: Constant =
        Constant::new("chance that people keep to themselves what was done", 0.3, "", Tag::Invented(PEOPLE));
    /// Who tells what they never tried.
    const ASSUMES: Constant =
        Constant::new("chance that people tell what they never tried", 0.2, "", Tag::Invented(PEOPLE));
    /// Who worries about cost.
    const WORRIES: Constant = Constant::new("chance that people worry about cost", 0.4, "", Tag::Invented(PEOPLE));
    /// Steps of the sum beyond which they want to be asked, and how many there are.
    const PURSES: Constant<(u16, u16)> =
        Constant::new("dollars beyond which people want to be asked: a step, and steps", (50, 6), "$", Tag::Invented(PEOPLE));
    /// First hour of a visit, and how many half hours there are to choose from.
    const RINGS: Constant<(f64, usize)> =
        Constant::new("first hour of a visit, and the half hours after it", (8.0, 16), "", Tag::Invented(PEOPLE));
}

/// How a household takes trouble: drawn once for a house.
#[derive(Clone, Copy, PartialEq, Debug, Serialize, Deserialize)]
pub struct Life {
    /// Weekday of the first day, 0 for Monday.
    pub weekday: u16,
    /// The day of the big evening, counted from the first.
    pub big_day: u16,
    /// Times somebody closes a breaker found tripped.
    pub resets: u16,
    /// Times somebody pushes the red button.
    pub pushes: u16,
    /// Time from cold water to a look at the load center.
    pub slow_to_look: Seconds,
    /// Annoyance that makes them call.
    pub patience: u16,
    /// Who of their acquaintance meddles, if anybody did.
    pub meddler: Meddler,
    /// Age of the heater in years.
    pub years: u16,
    /// They know what else feeds the heater, if anything does.
    pub knows_supply: bool,
    /// Time of day at which the technician rings.
    pub rings_at: Seconds,
    /// Where their memory's own slips are drawn from.
    pub memory: u32,
    /// How much they forget and confuse, 0 to 1.
    pub forgets: f64,
    /// They keep to themselves what they or a neighbour did to it.
    pub hides: bool,
    /// They tell what they never tried or looked up as if they had.
    pub assumes: bool,
    /// Dollars beyond which they want to be asked first, where they worry.
    pub ask_above: Option<u16>,
}

impl Life {
    /// Draws one.
    pub fn drawn(draw: &mut Draw) -> Self {
        let handy = draw.chance(EVEN.get());
        let (resets, pushes) = (1 + draw.index(MOST_RESETS.get()) as u16, 1 + draw.index(2) as u16);
        let knows_button = draw.chance(KNOWS_BUTTON.get());
        let meddlers = [Meddler::Household, Meddler::Neighbour, Meddler::Nobody, Meddler::Tradesperson];
        let ((soonest, latest), (least, spread)) = (LOOKS.get(), PATIENCE.get());
        let (first_ring, rings) = RINGS.get();
        let (purse_step, purses) = PURSES.get();
        Self {
            weekday: draw.index(usize::from(WEEK.get())) as u16,
            big_day: 2 + draw.index(BIG_DAYS.get()) as u16,
            resets: if handy { resets } else { 0 },
            pushes: if handy && knows_button { pushes } else { 0 },
            slow_to_look: Seconds::hours(draw.between(soonest, latest)),
            patience: least + draw.index(usize::from(spread)) as u16,
            meddler: *meddlers.get(draw.index(meddlers.len())).unwrap_or(&Meddler::Nobody),
            years: 2 + draw.index(AGES.get()) as u16,
            knows_supply: draw.chance(EVEN.get()),
            rings_at: Seconds::hours(first_ring + draw.index(rings) as f64 / 2.0),
            memory: draw.index(u32::MAX as usize) as u32,
            forgets: draw.unit(),
            hides: draw.chance(HIDES.get()),
            assumes: draw.chance(ASSUMES.get()),
            ask_above: draw
                .chance(WORRIES.get())
                .then(|| purse_step * (1 + draw.index(usize::from(purses)) as u16)),
        }
    }

    /// The same people, but nobody touches breaker or button.
    #[must_use]
    pub fn hands_off(self) -> Self {
        Self { resets: 0, pushes: 0, ..self }
    }
}

/// What shows in a house that somebody worked there.
#[derive(Clone, Copy, PartialEq, Eq, Debug, Default, Serialize, Deserialize)]
pub struct Worked {
    /// A wire on a screw not its own, pipes crossed, a breaker with both poles on a leg, a piece of wire, a cap.
    pub touched: bool,
    /// Wires crossed as only the change of the part between them does it.
    pub changed: bool,
}

/// One draw as it went.
#[derive(Clone, Copy, PartialEq, Debug, Serialize, Deserialize)]
pub struct Drawn {
    /// When, from the start.
    pub at: Seconds,
    /// At which tap.
    pub tap: Tap,
    /// What was wanted at the tap.
    pub wanted: Temperature,
    /// How long it ran.
    pub ran: Seconds,
    /// Hottest water out of the hot side.
    pub hottest: Temperature,
    /// Coldest water felt.
    pub coldest: Temperature,
    /// Time until it was felt as cold; `None` if it never was.
    pub until_cold: Option<Seconds>,
    /// Somebody had a hand in it.
    pub felt: bool,
}

impl Drawn {
    /// Never even warm.
    pub fn never_warm(&self) -> bool {
        self.felt && self.hottest < WARM.get()
    }

    /// Warm, but never what was wanted.
    pub fn lukewarm(&self) -> bool {
        self.felt && self.hottest >= WARM.get() && self.hottest.above(self.wanted).0 < -COLD.get().0
    }

    /// Good at first, cold before the end.
    pub fn ran_out(&self) -> bool {
        self.felt && !self.never_warm() && !self.lukewarm() && self.until_cold.is_some()
    }

    /// Hot enough to burn.
    pub fn burnt(&self) -> bool {
        self.felt && self.hottest >= BURNS.get()
    }
}

/// What a household lived through: facts only.
#[derive(Clone, PartialEq, Debug, Serialize, Deserialize)]
pub struct Week {
    /// Who.
    pub kind: HouseholdKind,
    /// Where the heater stands.
    pub location: Location,
    /// Their ways.
    pub life: Life,
    /// Time from the beginning of the trouble to the technician's ring.
    pub lasted: Seconds,
    /// Longest time it could have lasted.
    pub longest: Seconds,
    /// Every draw.
    pub draws: Vec<Drawn>,
    /// Trips of the heater's breaker.
    pub breaker_trips: u16,
    /// Times somebody found it tripped and closed it again.
    pub closed_again: u16,
    /// Times somebody found it tripped.
    pub found_tripped: u16,
    /// Trips of the limit.
    pub limit_trips: u16,
    /// Times somebody pushed the button.
    pub button_pushes: u16,
    /// Water from the relief valve.
    pub relief: Volume,
    /// Water on the floor.
    pub floor: Volume,
    /// Electricity into the elements.
    pub energy: Joules,
    /// What the same draws and the standby loss should have taken.
    pub usual: Joules,
    /// How long a thermostat called for heat.
    pub calling: Seconds,
    /// Rated power of an element by the plate.
    pub plate: Watts,
    /// Highest pressure.
    pub peak: Pressure,
    /// A joint burnt through, or is charred and warm.
    pub burnt_smell: bool,
    /// Water drawn at the taps.
    pub drawn: Volume,
    /// Water that ran away where nobody sees it.
    pub hidden: Volume,
    /// It rumbled while it heated.
    pub rumbles: bool,
    /// A tap spat when it was opened.
    pub spat: bool,
    /// Days that nobody was there.
    pub away: u16,
    /// A pipe ticked as hot water ran.
    pub ticks: bool,
    /// Metal at the heater was seen wet with sweat.
    pub sweats: bool,
    /// A line that is none of the heater's drips beside it, and somebody may have seen that.
    pub beside: bool,
    /// Taps spat at the end.
    pub spits: bool,
    /// Grit comes with the water.
    pub grit: bool,
    /// An element that is not the one the plate asks for was put in.
    pub odd_part: bool,
    /// What somebody's hands did to it before these days shows.
    pub worked: Worked,
    /// Hot flow of a tap wide open over that of a sound house.
    pub strong: f64,
    /// Both dials at the end.
    pub dials: [Temperature; 2],
    /// Demand over what the house was fitted for.
    pub demand: f64,
    /// Lights were dim or out, and too bright, at the end.
    pub lights: [bool; 2],
    /// Hot water smelled of rotten eggs when somebody used it.
    pub eggs: bool,
    /// Hot water was brown when somebody used it.
    pub rusty: bool,
    /// A tap or the tank tingled at the end.
    pub tingle: bool,
    /// A second supply exists.
    pub second_supply: bool,
}

impl Week {
    /// Weekday on which the technician rings, 0 for Monday.
    pub fn weekday(&self) -> u16 {
        (self.life.weekday + self.lasted.to_days().floor() as u16) % WEEK.get()
    }
}
