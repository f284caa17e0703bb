//! What an act showed: a reading, a sight, an answer, a change, a reason why not. Meaning, not wording.

use plant::fault::PartKind;
use plant::heater::{Plate, Rating};
use plant::{Circuit, End, Handle, Level, Place, Point, Screw, Tap};
use quantity::{Amps, Flow, Ohms, Pressure, Seconds, Temperature, Volts, Volume};
use serde::{Deserialize, Serialize};

use crate::action::{Cover, Fitting, Helper};
use crate::person::Harm;
use plant::household::Answer;

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
    /// Beyond the range.
    Over,
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

/// Something perceived.
#[derive(Clone, PartialEq, Debug, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case", tag = "see")]
pub enum Sight {
    /// Nothing out of the ordinary.
    Ordinary,
    /// A breaker's handle.
    BreakerHandle {
        /// Slot.
        slot: u32,
        /// Handle.
        handle: Handle,
        /// A lock hangs on it.
        locked: bool,
    },
    /// A charred joint.
    Charred {
        /// Which wire end.
        end: End,
    },
    /// A wire end that lies off its screw.
    Lifted {
        /// Which.
        end: End,
    },
    /// A wire end on a screw other than the diagram's.
    Crossed {
        /// Which.
        end: End,
        /// Where it is.
        on: Screw,
    },
    /// The limit's button stands proud or lies in.
    Button {
        /// Proud: tripped.
        proud: bool,
    },
    /// A fitting and whether it is wet.
    Wet {
        /// Which.
        fitting: Fitting,
        /// Drops form while one watches.
        dripping: bool,
    },
    /// A dry fitting.
    Dry {
        /// Which.
        fitting: Fitting,
    },
    /// Water stands on the floor.
    WaterOnFloor {
        /// About how much.
        volume: Volume,
    },
    /// The discharge pipe runs or drips.
    ReliefRunning,
    /// There is an expansion tank, or none.
    ExpansionTank {
        /// There is one.
        there: bool,
    },
    /// A check valve or regulator in the cold line at the meter.
    CheckValve {
        /// There is one.
        there: bool,
    },
    /// White flakes in a bucket or strainer.
    Flakes,
    /// The tap runs: full bore, spitting, or nothing.
    TapRuns {
        /// Which.
        tap: Tap,
        /// Flow.
        flow: Flow,
        /// Spits air.
        spitting: bool,
    },
    /// The drain runs or stands.
    DrainRuns {
        /// Flow.
        flow: Flow,
    },
    /// Water came from the relief valve when lifted: solid or airy.
    LeverFlow {
        /// No air in it.
        solid: bool,
    },
    /// A thermostat clicks, or a hum of heating starts, when tried.
    Starts {
        /// Something started.
        started: bool,
    },
    /// The reset button clicked in.
    Clicked,
    /// The reset button does nothing.
    NoClick,
    /// Smell of burnt insulation.
    BurntSmell,
    /// Simmering of an element at work.
    Simmering,
    /// Warm or hot to the hand.
    Warmth {
        /// Felt temperature, about.
        about: Temperature,
    },
    /// Scorched element, plating gone.
    ScorchedElement {
        /// Which.
        level: Level,
    },
    /// Water of this warmth over the hand.
    Water {
        /// Temperature.
        temperature: Temperature,
    },
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
    /// Too far from that screw.
    OutOfReach {
        /// Which.
        screw: Screw,
    },
    /// Somebody's lock is on it.
    Locked,
    /// A breaker must be off before a lock goes on.
    NotOff,
    /// Water would come out: too much in the tank.
    TankNotDrained {
        /// Height it has to fall below, as a fraction of full.
        below: f64,
    },
    /// Pressure still on the tank.
    UnderPressure,
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

/// Something noticed meanwhile.
#[derive(Clone, PartialEq, Debug, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case", tag = "notice")]
pub enum Noticed {
    /// A breaker tripped with a clack.
    BreakerTripped {
        /// Slot.
        slot: u32,
    },
    /// Somebody of the house switched a breaker on.
    SomebodyReset {
        /// Slot.
        slot: u32,
    },
    /// A click at a control.
    Click {
        /// Where.
        level: Level,
    },
    /// The relief valve runs.
    ReliefRuns,
    /// Water spreads on the floor.
    Flooding {
        /// How much so far.
        volume: Volume,
    },
    /// A bang and a smell from inside.
    Bang,
    /// The drain stands still though water is left.
    DrainStopped,
    /// The drain has run out.
    TankEmpty,
    /// The tap runs full and steady: no more air.
    RunsSolid {
        /// Which tap.
        tap: Tap,
    },
    /// A flash and a bang where a wire or lead met a live part.
    Flash {
        /// Where.
        at: Point,
    },
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
    },
    /// An ohms or insulation test on a circuit not proved dead.
    OhmsUnproved {
        /// It was live.
        live: bool,
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
        /// Every cover was on and every wire landed.
        covered: bool,
    },
    /// Something put right what was wrong.
    Cured {
        /// How.
        by: CuredBy,
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

/// How a cure came about.
#[derive(Clone, Copy, PartialEq, Eq, Debug, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum CuredBy {
    /// By the act that belongs to the fault.
    Remedy,
    /// By changing something else.
    Luck,
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
