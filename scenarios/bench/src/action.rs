//! Everything a technician can do. This is also the alphabet of attempt files.

use plant::fault::{Advice, FaultId};
use plant::heater::Rating;
use plant::{End, Level, Place, Point, Screw, Stab, Tap};
use quantity::{Temperature, Volume};
use serde::Serialize;

use plant::household::Question;

pub use crate::things::*;

/// One act. Written in files as `{"do": "meter", "function": "volts", "red": "H1", "black": "H3"}`.
#[derive(Clone, PartialEq, Debug, Serialize)]
#[serde(tag = "do", rename_all = "kebab-case")]
pub enum Action {
    /// Ask the customer something.
    Ask {
        /// What.
        question: Question,
    },
    /// Tell the household that power and hot water will be off, and to touch nothing.
    TellHousehold,
    /// Answer what the people have heard and ask about: it is so, or it is not.
    Answer {
        /// It is so.
        so: bool,
    },
    /// Name what the work will cost, and get the customer's consent.
    AgreeCost,
    /// Read something written.
    Read {
        /// What.
        what: Writing,
    },
    /// Look at a place as it is now.
    Look {
        /// Where.
        at: Place,
    },
    /// Listen at a place.
    Listen {
        /// Where.
        at: Place,
    },
    /// Smell at a place.
    Smell {
        /// Where.
        at: Place,
    },
    /// Touch something with the hand: a wire, a screw, the shell, or water at a tap.
    Touch {
        /// What.
        at: Touchable,
    },
    /// Wipe a fitting dry, to look again later.
    Wipe {
        /// Which fitting.
        fitting: Fitting,
    },
    /// Insulating gloves on or off.
    Gloves {
        /// On.
        on: bool,
    },
    /// Eye protection on or off.
    EyeProtection {
        /// On.
        on: bool,
    },
    /// Move a breaker's handle. From tripped it goes off first; on from tripped does nothing.
    Breaker {
        /// Its slot in the load center, 0 the first.
        slot: u32,
        /// On or off.
        on: bool,
    },
    /// Turn a dial up and listen: does anything start?
    TryStart,
    /// Own lock and tag on a breaker that is off, or take them off.
    Lock {
        /// Its slot.
        slot: u32,
        /// On.
        on: bool,
    },
    /// Move a breaker to a space where its poles sit on both legs of the bus. It is off then.
    MoveBreaker {
        /// Its slot.
        slot: u32,
    },
    /// Throw the handle of the switch in the line, or push the lever of a timer.
    BoxHandle {
        /// Closed.
        closed: bool,
    },
    /// Own lock and tag on the open switch in the line, or take them off.
    BoxLock {
        /// On.
        on: bool,
    },
    /// Pull a fuse of the switch in the line out of its clips, or put it back.
    PullFuse {
        /// Of which leg.
        leg: Stab,
        /// Out.
        out: bool,
    },
    /// Ohms through a fuse that is out of its clips.
    TestFuse {
        /// Of which leg.
        leg: Stab,
    },
    /// Set the clock of a timer in the line to the time of day.
    SetClock,
    /// Plug a portable heater into a receptacle of one leg, or pull it out: a big load on that side alone.
    PortableHeater {
        /// Of which leg.
        leg: Stab,
        /// Plugged in.
        on: bool,
    },
    /// Write the truth into the load center's directory.
    Relabel {
        /// Its slot.
        slot: u32,
        /// What it feeds.
        feeds: plant::Circuit,
    },
    /// Take a cover off or put it back.
    Cover {
        /// Which.
        which: Cover,
        /// Off.
        off: bool,
    },
    /// A reading with the two leads.
    Meter {
        /// What the meter is set to.
        function: MeterFunction,
        /// Red lead.
        red: Point,
        /// Black lead.
        black: Point,
    },
    /// Hold the leads together and zero the ohms range.
    ZeroLeads,
    /// Read a source known to be live.
    ProveMeter {
        /// Which.
        on: KnownSource,
    },
    /// Put the red lead into one of the meter's jacks.
    Jack {
        /// Which.
        jack: Jack,
    },
    /// Put a fresh battery into the meter.
    ChangeBattery,
    /// Hold the non-contact tester to something.
    NonContact {
        /// To what.
        at: Point,
    },
    /// Change the leads for the spare pair in the van, and put a fresh fuse in the meter.
    SpareLeads,
    /// Current by clamp.
    Clamp {
        /// Around what.
        around: Clamped,
    },
    /// Press the limit's button.
    PressReset,
    /// Take a wire off its screw.
    Lift {
        /// Which end of which wire.
        end: End,
    },
    /// Put a label on a wire end.
    Label {
        /// Which end of which wire.
        end: End,
    },
    /// Land a lifted wire on a screw, any screw.
    Land {
        /// Which end of which wire.
        end: End,
        /// On which screw.
        screw: Screw,
        /// With a torque screwdriver to the marked value.
        torqued: bool,
    },
    /// Cut a joint back to bright copper and make it again.
    Remake {
        /// Which end of which wire.
        end: End,
        /// With a torque screwdriver to the marked value.
        torqued: bool,
    },
    /// Turn a thermostat's dial.
    Dial {
        /// Which.
        level: Level,
        /// To what.
        to: Temperature,
    },
    /// Press a thermostat flat against the shell.
    Seat {
        /// Which.
        level: Level,
    },
    /// Open the windows, and see that no flame and no spark is near.
    Ventilate,
    /// Thaw a pipe with warm air, from the open end on, no flame.
    Thaw,
    /// Set the house's main valve, beside the water meter.
    MainValve {
        /// Opening, 0 shut to 1 full.
        opening: f64,
    },
    /// Set the heater's cold valve.
    ColdValve {
        /// Opening, 0 shut to 1 full.
        opening: f64,
    },
    /// Set the valve in the return of a recirculation loop.
    ReturnValve {
        /// Opening, 0 shut to 1 full.
        opening: f64,
    },
    /// Set a hot tap.
    Tap {
        /// Which.
        tap: Tap,
        /// Opening, 0 shut to 1 full.
        opening: f64,
    },
    /// Pull a sensor's plug out of the board, or put it back.
    Plug {
        /// Which sensor's.
        level: Level,
        /// In.
        fitted: bool,
    },
    /// Shut or open both stops under a fixture.
    Stops {
        /// Which.
        tap: Tap,
        /// Shut.
        shut: bool,
    },
    /// Catch the first water of one side of a tap in a clean glass: look at it and smell it.
    Sample {
        /// Which tap.
        tap: Tap,
        /// Its hot side.
        hot: bool,
    },
    /// Unscrew the anode rod and look at it, with the water off and the pressure let down.
    LookAtAnode,
    /// Read the house's water meter and watch its small dial.
    ReadWaterMeter,
    /// Run a hot tap into a bucket, with a watch and a thermometer, then shut it.
    Bucket {
        /// Which tap.
        tap: Tap,
        /// How much.
        volume: Volume,
    },
    /// Hose from the drain to a safe place, on or off.
    Hose {
        /// On.
        on: bool,
    },
    /// Set the drain valve.
    Drain {
        /// Opening, 0 shut to 1 full.
        opening: f64,
    },
    /// Lift the relief valve's lever, or let it go.
    ReliefLever {
        /// Held up.
        up: bool,
    },
    /// Let time pass.
    Wait {
        /// How long, in minutes; at most a day.
        minutes: f64,
    },
    /// Let time pass until every thermostat is satisfied, at most four hours.
    WaitForCutOut,
    /// Let the people of the house use hot water as they mean to, and wait meanwhile.
    LetThemUse {
        /// How long, in minutes; at most a day.
        minutes: f64,
    },
    /// Thermometer.
    Thermometer {
        /// On or in what.
        at: Probe,
    },
    /// Lazy-hand gauge on the drain or a tap, on or off.
    Gauge {
        /// On.
        on: bool,
    },
    /// Read the gauge: pressure now and the highest since it was set.
    ReadGauge,
    /// Read an expansion tank's charge at its air valve.
    TankCharge,
    /// Change a part. The tank, the power and the covers are as the learner left them.
    Replace {
        /// The new part.
        part: NewPart,
    },
    /// Undo both pipes at the nipples on top of the heater.
    PartPipes,
    /// Carry the old heater out: drained, its pipes and leads off.
    CarryOut {
        /// Somebody takes the other end.
        helped: bool,
    },
    /// Set a new heater from the van in its place. It comes with its nipples, without a relief valve.
    SetHeater {
        /// Nominal storage.
        nominal: Volume,
        /// Rating of its elements.
        rating: Rating,
    },
    /// Put both pipes on the nipples.
    JoinPipes {
        /// Through dielectric fittings.
        dielectric: bool,
    },
    /// Put the old relief valve with its old pipe into the new heater's port.
    ReuseRelief,
    /// Write down what is wrong, and on what evidence.
    Finding {
        /// The one thing wrong; `None` for nothing wrong.
        fault: Option<FaultId>,
        /// Steps of this attempt that show it, 1 the first.
        evidence: Vec<u32>,
    },
    /// Say something to the customer that may be the whole remedy.
    Advise {
        /// What.
        advice: Advice,
    },
    /// Report something seen that is not the fault.
    Report {
        /// What.
        what: Observation,
    },
    /// Stop here and call somebody.
    StopAndCall {
        /// Whom.
        whom: Helper,
    },
    /// Tell the customer what was found, what was done, and that the water will be hot.
    TellResult,
    /// Hand over the job. Nothing follows.
    HandOver,
    /// The page's clock ran out. Appended by the page, marked unproven: a file cannot prove a wall clock.
    TimeUp {
        /// Real minutes allowed.
        allowed: f64,
    },
}
