//! Things perceived, and things noticed meanwhile.

use plant::conductor::Metal;
use plant::controls::board::Lockout;
use plant::{AnodeMetal, BoxKind, ContactAt, Discharge, End, Handle, Level, Point, Screw, Stab, Tap};
use quantity::{Flow, Metres, Seconds, Temperature, Volume};
use serde::{Deserialize, Serialize};

use crate::things::Fitting;

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
    /// The box in the line.
    Box {
        /// What it is.
        kind: BoxKind,
        /// Handle or contacts closed; `None` where a door hides them.
        closed: Option<bool>,
        /// A lock hangs on it.
        locked: bool,
    },
    /// A clock behind the box's door, and the hours it keeps.
    BoxHours {
        /// What the clock shows.
        shows: Seconds,
        /// Off from this time of day.
        off_from: Seconds,
        /// For so long.
        off_for: Seconds,
    },
    /// The utility's sealed relay in the off-peak cable.
    OffPeakRelay {
        /// Its flag shows closed.
        closed: bool,
    },
    /// A fuse out of its clips.
    FuseOut {
        /// Of which leg.
        leg: Stab,
    },
    /// What an electronic heater's board says.
    BoardSays {
        /// Its supply is there.
        lit: bool,
        /// Why it does not heat.
        lockout: Option<Lockout>,
    },
    /// The water meter.
    WaterMeter {
        /// Its small dial turns.
        turning: bool,
        /// Water since the meter stood at nothing.
        reading: Volume,
    },
    /// A thermostat that does not lie flat on the shell.
    OffTheShell {
        /// Which.
        level: Level,
    },
    /// A portable heater plugged in at a receptacle.
    Portable {
        /// Of which leg.
        leg: Stab,
        /// How it glows.
        glow: Glow,
    },
    /// A breaker is a tandem: two narrow handles without a tie in one space.
    Tandem {
        /// Slot.
        slot: u32,
    },
    /// Both poles of a breaker sit on stabs of one leg, seen behind the front.
    OneLeg {
        /// Slot.
        slot: u32,
    },
    /// What a cable is, by its sheath and its bare ends.
    Cable {
        /// Its gauge.
        awg: u8,
        /// Its metal.
        metal: Metal,
        /// Its connectors are marked for that metal.
        rated: bool,
    },
    /// A charred joint.
    Charred {
        /// Which wire end.
        end: End,
    },
    /// A piece of wire across each pole of the limit.
    LimitBridged,
    /// A limit that does not lie flat on the shell.
    LimitOffTheShell {
        /// Of which compartment.
        level: Level,
    },
    /// A control browned or sooty where a contact of it ran hot.
    Browned {
        /// Which contact.
        at: ContactAt,
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
    /// The same of the second limit of an off-peak heater, beside its lower thermostat.
    LowerButton {
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
    /// Somebody of the house used hot water, and says how it was.
    Used {
        /// Time of day at which they began.
        at: Seconds,
        /// Where.
        tap: Tap,
        /// How long it ran.
        ran: Seconds,
        /// How it was.
        went: Went,
    },
    /// Water caught in a glass.
    Sample {
        /// From the hot side.
        hot: bool,
        /// Brown.
        rusty: bool,
        /// Smells of rotten eggs.
        eggs: bool,
    },
    /// The anode rod.
    Rod {
        /// Its metal.
        metal: AnodeMetal,
        /// Length over which its core is bare; none where it is thick all along.
        bare: Metres,
        /// Its whole length.
        length: Metres,
    },
    /// A recirculation pump beside the heater.
    Loop {
        /// It hums.
        runs: bool,
    },
    /// Grit and scale in what the drain gives.
    Grit,
    /// Popping under a crusted element.
    Popping,
    /// A pipe ticks.
    Ticking,
    /// The relief valve's discharge pipe, as it was laid.
    Discharge {
        /// How.
        pipe: Discharge,
    },
    /// Fittings between steel and copper.
    Dielectric {
        /// They are dielectric.
        there: bool,
    },
    /// The pipes are off the heater's nipples.
    PipesOff,
    /// No relief valve is in its port.
    OpenPort,
    /// No heater stands there.
    NoHeater,
    /// A pan under the heater.
    Pan {
        /// There is one.
        there: bool,
    },
    /// A dry streak of rust down the jacket.
    RustStreak,
    /// Old soot behind a cover, on sound wires.
    OldSoot,
    /// A dry crust of lime at the end of the discharge pipe.
    LimeCrust,
    /// A line that is none of the heater's drips beside it, cold.
    Condensate,
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
    /// Nothing came from the relief valve when lifted.
    LeverNothing,
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

/// How a portable heater glows.
#[derive(Clone, Copy, PartialEq, Eq, Debug, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Glow {
    /// Dark and cold.
    Dark,
    /// Faintly, hardly warm.
    Faint,
    /// As it should.
    Full,
}

/// What people say of the hot water that they used.
#[derive(Clone, Copy, PartialEq, Debug, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case", tag = "how")]
pub enum Went {
    /// As it should be.
    Well,
    /// Good at first, then cold.
    RanCold {
        /// After how long.
        after: Seconds,
    },
    /// Warm, but never what was wanted.
    Lukewarm,
    /// Never even warm.
    NeverWarm,
    /// Hot enough to burn.
    TooHot,
    /// A machine took it; nobody felt it.
    Unfelt,
    /// It spat air.
    Spat,
    /// Nothing came.
    Dry,
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
    /// A timer or the utility's relay clacks in the box in the line.
    BoxClacks {
        /// Closed now.
        closed: bool,
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
    /// The low-battery sign stands on the meter's display.
    LowBattery,
    /// A flash and a bang where a wire or lead met a live part.
    Flash {
        /// Where.
        at: Point,
    },
}
