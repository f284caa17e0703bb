//! What puts a fault right, and whose work that is.

use crate::named::named;
use crate::parts::Level;
use crate::points::End;

/// What has to be done about a fault by somebody whose licence allows it.
#[derive(Clone, Copy, PartialEq, Debug)]
pub enum Remedy {
    /// A part has to be changed for one that matches the plate.
    Replace(PartKind),
    /// Several parts have to be changed, each for one that matches the plate.
    ReplaceAll(&'static [PartKind]),
    /// Wires have to be landed on their own screws.
    Land(&'static [End]),
    /// A thermostat has to be pressed flat against the shell.
    Seat(Level),
    /// A wire end has to be cut back, made again and torqued; of several the one this house has.
    Remake(&'static [End]),
    /// Press the limit's button once the cause is known to be gone.
    ResetLimit,
    /// Close the breaker once the elements are known to be clear of ground.
    CloseBreaker,
    /// Set a timer's clock to the time of day.
    SetClock,
    /// Move a breaker to a space where its poles sit on both legs.
    MoveBreaker,
    /// Close the right breaker and write the truth into the directory.
    Relabel,
    /// Take the board's supply away and give it back, once the tank is known to be full.
    ClearBoard,
    /// Nothing here: lock off what could be hurt and call the utility.
    CallUtility,
    /// Change a gasket, and dry what it has wetted.
    DryAndReplace(PartKind),
    /// Let gas out at the taps, windows open, no flame.
    Vent,
    /// Thaw the pipe, fill the tank, and only then close the breaker.
    ThawAndFill,
    /// Both dials to 120 °F.
    SetDials,
    /// Flush the tank until the drain runs clear, and change a part that the sediment has ruined.
    FlushAndReplace(PartKind),
    /// Nothing is broken: say so, and say what would help.
    Advise(Advice),
}

named! {
    /// A part that can be changed.
    PartKind {
        /// Upper element with its gasket.
        UpperElement = "upper-element",
        /// Lower element with its gasket.
        LowerElement = "lower-element",
        /// Upper thermostat.
        UpperThermostat = "upper-thermostat",
        /// Lower thermostat.
        LowerThermostat = "lower-thermostat",
        /// High limit; of an off-peak heater the one above.
        Limit = "limit",
        /// The limit of an off-peak heater's lower circuit.
        LowerLimit = "lower-limit",
        /// The heater's breaker.
        Breaker = "breaker",
        /// A fuse, where there is one.
        Fuse = "fuse",
        /// Time switch of the box in the line.
        TimeSwitch = "time-switch",
        /// Connectors of the junction box, rated for aluminium and copper.
        Connectors = "connectors",
        /// Dip tube.
        DipTube = "dip-tube",
        /// Gasket of the upper element alone.
        UpperGasket = "upper-gasket",
        /// Gasket of the lower element alone.
        LowerGasket = "lower-gasket",
        /// Relief valve.
        ReliefValve = "relief-valve",
        /// Expansion tank, a new one or a first one.
        ExpansionTank = "expansion-tank",
        /// Upper sensor of an electronic heater.
        UpperSensor = "upper-sensor",
        /// Lower sensor of an electronic heater.
        LowerSensor = "lower-sensor",
        /// Control board with its relays.
        Board = "board",
        /// Pressure regulator behind the water meter.
        Regulator = "regulator",
        /// Mixing valve at the heater's outlet.
        MixingValve = "mixing-valve",
        /// Cartridge of one fixture, with its checks and its stop.
        Cartridge = "cartridge",
        /// Drain valve.
        DrainValve = "drain-valve",
        /// Both nipples with their traps and the unions on them.
        Nipples = "nipples",
        /// The two connections on top, each on its own nipple.
        Connections = "connections",
        /// A length of the hot line.
        HotLine = "hot-line",
        /// Padded clips of a hot pipe.
        PipeClips = "pipe-clips",
        /// Check valve in the return of a recirculation loop.
        ReturnCheck = "return-check",
        /// Timer of a recirculation pump.
        PumpTimer = "pump-timer",
        /// Anode rod.
        Anode = "anode",
        /// The whole heater.
        Heater = "heater",
    }
}

named! {
    /// Words to the customer that can be the right end of a call.
    Advice {
        /// The house asks for more hot water than this heater can make.
        DemandExceedsCapacity = "demand-exceeds-capacity",
        /// A 240 V heater on 208 V makes three quarters of its power: accept it or fit 208 V elements.
        LowSupplyVoltage = "low-supply-voltage",
        /// Why 120 °F, and a mixing valve for anything hotter.
        SafeTemperature = "safe-temperature",
        /// Colder water comes in: what that asks of a sound heater.
        ColdMain = "cold-main",
        /// Damp air and cold metal: let air in; nothing leaks.
        DampAir = "damp-air",
        /// The heater is sound; what was found and measured.
        NothingWrong = "nothing-wrong",
    }
}

/// Whose work a remedy is. Who may do what is local law; this is the usual split, from memory.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub enum Scope {
    /// Parts and wires of the heater itself.
    HeaterParts,
    /// Inside the load center or on the branch circuit.
    Panel,
    /// Piping, vessel, relief, expansion.
    Piping,
    /// Words and settings.
    Words,
    /// The utility's side of the meter.
    Utility,
}
