//! What an act showed: a reading, a sight, an answer, a change, a reason why not. Meaning, not wording.

use plant::heater::{Plate, Rating};
use plant::{Circuit, ElementLength, End, Level, Mount, Place, Screw, Tap};
use quantity::{Amps, Flow, Ohms, Pressure, Seconds, Temperature, Volts, Volume};
use serde::{Deserialize, Serialize};

use plant::household::Answer;

pub use crate::fact::*;
pub use crate::sight::*;

use crate::instrument::{Figures, insulation, multimeter};
use crate::person::Harm;
use crate::things::Cover;

/// Everything one act brought.
#[derive(Clone, PartialEq, Debug, Serialize, Deserialize)]
pub struct Outcome {
    /// Simulated time it took.
    pub took: Seconds,
    /// What it showed.
    pub shown: Shown,
    /// Harm done to a person or to the house.
    pub harms: Vec<Harm>,
    /// What the technician noticed happening meanwhile.
    pub noticed: Vec<Noticed>,
    /// Facts for the score that the technician need not have noticed.
    pub facts: Vec<Fact>,
}

/// What an act showed.
#[derive(Clone, PartialEq, Debug, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case", tag = "is")]
pub enum Shown {
    /// The meter's display.
    Meter {
        /// The display.
        display: Display,
    },
    /// Current on the clamp.
    Clamp {
        /// Amperes, as displayed.
        amps: Amps,
    },
    /// The non-contact tester.
    NonContact {
        /// It sounds. Silence shows nothing.
        sounds: bool,
    },
    /// A thermometer.
    Temperature {
        /// As displayed.
        reading: Temperature,
    },
    /// A timed flow into a bucket.
    Bucket(Bucket),
    /// The gauge.
    Pressure {
        /// Now.
        now: Pressure,
        /// Highest since the gauge was set.
        highest: Pressure,
    },
    /// A charge at an air valve; `None` and wet when water comes out.
    Charge {
        /// Pressure, if air came.
        air: Option<Pressure>,
    },
    /// What was seen, heard, smelled or felt at a place.
    Sights {
        /// Where.
        at: Place,
        /// What.
        sights: Vec<Sight>,
    },
    /// The customer's answer.
    Said {
        /// The answer.
        answer: Answer,
    },
    /// The rating plate.
    Plate {
        /// As printed.
        plate: Plate,
    },
    /// The wiring diagram: home screws of every wire are on it.
    Diagram,
    /// An element's stamp.
    Stamp {
        /// Which element.
        level: Level,
        /// As stamped.
        rating: Rating,
        /// Which of the lengths of its watts, by the figure stamped beside them.
        length: ElementLength,
        /// What holds it.
        mount: Mount,
    },
    /// The directory: label of each slot, in order.
    Directory {
        /// Labels and ratings.
        labels: Vec<(Circuit, Amps)>,
    },
    /// Both dials.
    Dials {
        /// Upper.
        upper: Temperature,
        /// Lower.
        lower: Temperature,
    },
    /// Done; the state shows it.
    Done,
    /// Done, and time showed something: water level steady, tap spitting and so on.
    DoneWith {
        /// What.
        sights: Vec<Sight>,
    },
    /// Not done.
    Refused {
        /// Why.
        why: Refusal,
    },
    /// The coach stopped it before it hurt. Counted, nothing changed.
    Stopped {
        /// What would have happened.
        harm: Harm,
    },
}

/// What a meter's display says.
#[derive(Clone, Copy, PartialEq, Debug, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case", tag = "range")]
pub enum Display {
    /// Volts AC.
    Volts {
        /// Rounded to the display.
        volts: Volts,
    },
    /// Ohms.
    Ohms {
        /// Rounded to the display.
        ohms: Ohms,
    },
    /// Insulation, 500 V.
    Insulation {
        /// Rounded to the display.
        ohms: Ohms,
    },
    /// Amperes AC through the meter.
    Amps {
        /// Rounded to the display.
        amps: Amps,
    },
    /// Beyond the range.
    Over,
    /// Nothing at all: the battery is flat.
    Blank,
    /// The tone sounds, or not.
    Tone {
        /// It sounds.
        on: bool,
    },
    /// The ohms or insulation function met a live circuit: no reading is to be believed.
    Live {
        /// Volts it met.
        volts: Volts,
    },
}

impl Display {
    /// The figures and the unit as the display has them; `None` where it shows none.
    pub fn figures(&self) -> Option<Figures> {
        match *self {
            Self::Volts { volts } | Self::Live { volts } => multimeter::AC_VOLTS.figures(volts.get()),
            Self::Ohms { ohms } => multimeter::OHMS.figures(ohms.get()),
            Self::Insulation { ohms } => insulation::OHMS.figures(ohms.get()),
            Self::Amps { amps } => multimeter::AMPS.figures(amps.get()),
            Self::Over | Self::Tone { .. } | Self::Blank => None,
        }
    }
}

/// A timed flow.
#[derive(Clone, Copy, PartialEq, Debug, Serialize, Deserialize)]
pub struct Bucket {
    /// Which tap.
    pub tap: Tap,
    /// How much came.
    pub volume: Volume,
    /// Mean flow.
    pub flow: Flow,
    /// First steady temperature (after the pipe was flushed).
    pub first: Temperature,
    /// Temperature at the end.
    pub last: Temperature,
    /// Volume drawn when it had fallen 15 °F below the first; `None` if it did not.
    pub fell_after: Option<Volume>,
    /// It spat air.
    pub spat: bool,
}

/// Why an act was not done.
#[derive(Clone, PartialEq, Debug, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case", tag = "because")]
pub enum Refusal {
    /// A cover is still on.
    CoverOn {
        /// Which.
        cover: Cover,
    },
    /// A cover in front of this one has to come off, or one behind it go on, first.
    OrderOfCovers {
        /// Which is in the way.
        cover: Cover,
    },
    /// It is so already.
    AlreadySo,
    /// There is no such thing here.
    NotHere,
    /// The wire is on a screw.
    WireLanded {
        /// Which.
        end: End,
    },
    /// The wire is not on a screw.
    WireLifted {
        /// Which.
        end: End,
    },
    /// It hangs among others without labels: nobody knows what to write on it.
    WhichWire {
        /// Which it is in truth.
        end: End,
    },
    /// Too far from that screw.
    OutOfReach {
        /// Which.
        screw: Screw,
    },
    /// Somebody's lock is on it.
    Locked,
    /// The utility has sealed it.
    Sealed,
    /// There is nothing on it that takes a lock.
    NoHasp,
    /// The fuse is in its clips.
    FuseIn,
    /// A breaker or switch must be off before a lock goes on.
    NotOff,
    /// Water would come out: too much in the tank.
    TankNotDrained {
        /// Height it has to fall below, as a fraction of full.
        below: f64,
    },
    /// An element for a thread where there are bolts, or the other way round.
    OtherMount,
    /// An element that touches the far wall before it seats.
    TooLong,
    /// Pressure still on the tank.
    UnderPressure,
    /// It sits before the heater's own valve: only the main valve cuts it off.
    MainOpen,
    /// The pipes are on the heater.
    PipesOn,
    /// A heater stands there.
    HeaterStands,
    /// The gauge is not on.
    NoGauge,
    /// No water comes from that tap.
    NoFlow,
    /// Nothing to see from here.
    NothingToReach,
    /// A number makes no sense.
    OutOfRange,
    /// A step named as evidence does not exist yet.
    NoSuchStep {
        /// Which.
        step: u32,
    },
    /// The job is over.
    Over,
    /// Both leads on one point.
    SamePoint,
}
