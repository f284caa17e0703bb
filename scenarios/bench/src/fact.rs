//! Facts for the score: what was so, whether or not anybody noticed. And how a job ended.

use plant::fault::PartKind;
use plant::{End, Level, Point, Screw};
use quantity::Temperature;
use serde::{Deserialize, Serialize};

use crate::things::Helper;

/// What proving dead lacked first, in the order in which it is done.
#[derive(Clone, Copy, PartialEq, Eq, Debug, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Unproved {
    /// Own lock and tag on every source.
    Lock,
    /// The people knew.
    Household,
    /// The meter, on a known source.
    Meter,
    /// Leg to leg.
    Legs,
    /// The ground that the 0 V was read against.
    Ground,
    /// Some screw, or the very place.
    Screw,
    /// The meter once more.
    MeterAgain,
}

/// A fact for the score.
#[derive(Clone, PartialEq, Debug, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case", tag = "fact")]
pub enum Fact {
    /// A point proved dead this moment: own lock on every source that feeds it, meter proved before.
    TestedDead {
        /// Which.
        point: Point,
    },
    /// Proving was completed: every screw to be touched, meter proved again.
    ProvedDead,
    /// A hand or tool went where nothing had been proved dead.
    WorkedUnproved {
        /// Where.
        at: Point,
        /// It was live.
        live: bool,
        /// Gloves and eye protection were on.
        protected: bool,
        /// What was missing.
        missing: Unproved,
    },
    /// Leads were set on live parts.
    MeasuredLive {
        /// Gloves and eye protection were on.
        protected: bool,
    },
    /// An ohms or insulation test on a circuit not proved dead.
    OhmsUnproved {
        /// It was live.
        live: bool,
        /// What was missing.
        missing: Unproved,
    },
    /// A part was changed.
    Changed {
        /// Which.
        part: PartKind,
        /// It differed from the plate: rating, voltage, size.
        matches: bool,
        /// It was faulty, so the change was not in vain.
        needed: bool,
        /// Cost in dollars, part and nothing else.
        cost: f64,
    },
    /// Something was put in as it must not be: bare steel on copper, a relief valve that served before.
    PutInAmiss {
        /// At which part.
        part: PartKind,
    },
    /// A part was changed or a joint made again before any finding was written down.
    RepairedWithoutFinding,
    /// A piece of metal was shown to be a ground: by a live leg against it, or by continuity to the panel.
    GroundProved {
        /// Which.
        on: Screw,
    },
    /// Power came on.
    Energised {
        /// The tank was full.
        full: bool,
        /// A hot tap had run solid since air was let in.
        purged: bool,
        /// Both compartments were closed up and every wire landed.
        covered: bool,
    },
    /// Power came on while an element stood in air.
    EnergisedDry {
        /// Which element.
        level: Level,
    },
    /// Power came on with covers off or wires lifted.
    EnergisedOpen,
    /// A tap, hose or relief outlet ran hot enough to burn, with nothing to keep people clear.
    HotDischarge {
        /// How hot.
        temperature: Temperature,
    },
    /// A wire landed on a screw not its own.
    Miswired {
        /// Which.
        end: End,
        /// Where.
        on: Screw,
    },
    /// An ending.
    Ended {
        /// How.
        how: Ending,
    },
}

/// How a job ended.
#[derive(Clone, Copy, PartialEq, Eq, Debug, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case", tag = "by")]
pub enum Ending {
    /// Handed over.
    HandedOver,
    /// Stopped, and somebody called.
    Called {
        /// Whom.
        whom: Helper,
    },
    /// An injury ended it.
    Injured,
    /// Simulated time ran out.
    TimeOut,
    /// The page's clock ran out.
    ClockOut,
}
