//! What acts are done with and to: writings, covers, instruments' settings, parts from the van.

use plant::fault::PartKind;
use plant::heater::{Plate, Rating};
use plant::{AnodeMetal, ElementLength, Level, Mount, Point, Tap, Wire};
use quantity::{Amps, Pressure, Temperature, Volume};
use serde::{Deserialize, Serialize};

/// Something written that can be read.
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Debug, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Writing {
    /// Rating plate on the jacket.
    Plate,
    /// Wiring diagram inside the upper cover.
    Diagram,
    /// Stamp on the upper element.
    StampUpper,
    /// Stamp on the lower element.
    StampLower,
    /// Directory of the load center.
    Directory,
    /// Both dials.
    Dials,
}

/// Something a hand can be put on.
#[derive(Clone, Copy, PartialEq, Debug, Serialize)]
#[serde(rename_all = "kebab-case", tag = "what")]
pub enum Touchable {
    /// A screw or a wire end, bare, while the other hand rests on the tank.
    Metal {
        /// Which.
        point: Point,
    },
    /// Water running from a tap.
    Water {
        /// Which tap.
        tap: Tap,
    },
    /// A fitting, for wetness or warmth.
    Fitting {
        /// Which.
        fitting: Fitting,
    },
    /// The relief valve's discharge pipe.
    ReliefPipe,
}

/// A place that can be wet.
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Debug, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Fitting {
    /// Flange of the upper element.
    UpperElement,
    /// Flange of the lower element.
    LowerElement,
    /// Nipples on top.
    Nipples,
    /// Drain valve.
    DrainValve,
    /// Relief valve and its outlet.
    ReliefValve,
    /// Bottom rim of the jacket.
    BottomRim,
}

/// A cover, with what it takes to get behind it.
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Debug, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Cover {
    /// Dead front of the load center.
    PanelFront,
    /// Lid of the heater's junction box.
    JunctionBox,
    /// Door of the box in the line.
    BoxDoor,
    /// Upper cover plate.
    Upper,
    /// Lower cover plate.
    Lower,
    /// Insulation behind the upper plate.
    UpperInsulation,
    /// Insulation behind the lower plate.
    LowerInsulation,
    /// Plastic shield over the upper screws.
    UpperShield,
    /// Plastic shield over the lower screws.
    LowerShield,
}

impl Cover {
    /// What lies over the screws of a compartment, the outermost first.
    pub const fn over(level: Level) -> &'static [Self] {
        match level {
            Level::Upper => &[Self::Upper, Self::UpperInsulation, Self::UpperShield],
            Level::Lower => &[Self::Lower, Self::LowerInsulation, Self::LowerShield],
        }
    }
}

/// What the meter is set to.
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Debug, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum MeterFunction {
    /// Volts AC, 10 megohms.
    Volts,
    /// Volts AC, low impedance, about 3 kilohms.
    LowVolts,
    /// Ohms.
    Ohms,
    /// Continuity by tone.
    Continuity,
    /// Insulation at 500 V DC.
    Insulation,
    /// Amperes AC through the meter itself.
    Amps,
}

/// A jack for the meter's red lead.
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Debug, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Jack {
    /// For volts and ohms.
    Volts,
    /// For amperes: a near short to the black lead.
    Amps,
}

/// A source known to be live, to prove the meter on.
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Debug, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum KnownSource {
    /// A receptacle on another circuit.
    Receptacle,
    /// Proving unit from the kit.
    ProvingUnit,
}

/// What the clamp goes around.
#[derive(Clone, Copy, PartialEq, Debug, Serialize)]
#[serde(rename_all = "kebab-case", tag = "what")]
pub enum Clamped {
    /// One conductor.
    Wire {
        /// Which.
        wire: Wire,
    },
    /// Both legs of the branch cable at once: they cancel, only a ground current remains.
    BothLegs,
    /// Any two conductors at once: the clamp shows their phasor sum.
    Pair {
        /// One.
        first: Wire,
        /// The other.
        second: Wire,
    },
}

/// Where the thermometer goes.
#[derive(Clone, Copy, PartialEq, Debug, Serialize)]
#[serde(rename_all = "kebab-case", tag = "what")]
pub enum Probe {
    /// In the water of a running hot tap.
    Tap {
        /// Which.
        tap: Tap,
    },
    /// On the shell beside a control, cover off.
    Shell {
        /// Which.
        level: Level,
    },
    /// On a screw or wire end.
    Metal {
        /// Which.
        point: Point,
    },
    /// On the cold pipe.
    ColdPipe,
    /// On the pipe of the nipple marked hot.
    HotPipe,
    /// On the return of a recirculation loop, beside the heater.
    ReturnPipe,
    /// On the relief valve's discharge pipe.
    ReliefPipe,
    /// In water from the drain.
    Drain,
}

/// A part from the van.
#[derive(Clone, Copy, PartialEq, Debug, Serialize)]
#[serde(rename_all = "kebab-case", tag = "kind")]
pub enum NewPart {
    /// An element with a new gasket.
    Element {
        /// Which.
        level: Level,
        /// Its stamp.
        rating: Rating,
        /// Which of the lengths of its watts.
        length: ElementLength,
        /// What holds it in its opening.
        mount: Mount,
        /// The seat is scraped and brushed first.
        seat_cleaned: bool,
    },
    /// A thermostat; its dial comes set to 120 °F.
    Thermostat {
        /// Which.
        level: Level,
    },
    /// A high limit; of an off-peak heater the one above.
    Limit,
    /// The limit of an off-peak heater's lower circuit.
    LowerLimit,
    /// A breaker for the heater, of as many poles as its supply asks for.
    Breaker {
        /// Its rating.
        rating: Amps,
    },
    /// The fuses of a switch: all are changed together.
    Fuse {
        /// Its rating.
        rating: Amps,
    },
    /// A time switch for the box in the line, set to the time of day.
    TimeSwitch,
    /// Connectors rated for aluminium and copper, for the junction box.
    Connectors,
    /// A dip tube.
    DipTube,
    /// An anode rod.
    Anode {
        /// Its metal.
        metal: AnodeMetal,
    },
    /// A gasket alone.
    Gasket {
        /// Of which element.
        level: Level,
        /// The seat is scraped and brushed first.
        seat_cleaned: bool,
    },
    /// A relief valve.
    ReliefValve {
        /// Its set pressure.
        opens_at: Pressure,
    },
    /// An expansion tank.
    ExpansionTank {
        /// Its volume.
        volume: Volume,
        /// Its charge.
        charge: Pressure,
    },
    /// A sensor of an electronic heater.
    Sensor {
        /// Which.
        level: Level,
    },
    /// A control board.
    Board,
    /// A pressure regulator.
    Regulator {
        /// Pressure it is set to hold.
        set: Pressure,
    },
    /// A mixing valve.
    MixingValve {
        /// What it is set to deliver.
        set: Temperature,
    },
    /// A cartridge.
    Cartridge {
        /// Of which fixture.
        tap: Tap,
    },
    /// A drain valve.
    DrainValve,
    /// Both nipples, with traps and unions.
    Nipples,
    /// The two connections taken off and put each on its own nipple.
    Connections,
    /// A length of the hot line, once its leak is found.
    HotLine,
    /// Padded clips for a hot pipe.
    PipeClips,
    /// A check valve for the return of a loop.
    ReturnCheck,
    /// A timer for the pump of a loop, set to the hours the house uses.
    PumpTimer,
}

impl NewPart {
    /// The element that a plate asks for, on a clean seat.
    pub const fn asked_by(plate: &Plate, level: Level) -> Self {
        let &Plate { element: rating, length, mount, .. } = plate;
        Self::Element { level, rating, length, mount, seat_cleaned: true }
    }

    /// Its kind.
    pub const fn kind(&self) -> PartKind {
        match self {
            Self::Element { level: Level::Upper, .. } => PartKind::UpperElement,
            Self::Element { level: Level::Lower, .. } => PartKind::LowerElement,
            Self::Thermostat { level: Level::Upper } => PartKind::UpperThermostat,
            Self::Thermostat { level: Level::Lower } => PartKind::LowerThermostat,
            Self::Limit => PartKind::Limit,
            Self::LowerLimit => PartKind::LowerLimit,
            Self::Breaker { .. } => PartKind::Breaker,
            Self::Fuse { .. } => PartKind::Fuse,
            Self::TimeSwitch => PartKind::TimeSwitch,
            Self::Connectors => PartKind::Connectors,
            Self::DipTube => PartKind::DipTube,
            Self::Anode { .. } => PartKind::Anode,
            Self::Gasket { level: Level::Upper, .. } => PartKind::UpperGasket,
            Self::Gasket { level: Level::Lower, .. } => PartKind::LowerGasket,
            Self::ReliefValve { .. } => PartKind::ReliefValve,
            Self::ExpansionTank { .. } => PartKind::ExpansionTank,
            Self::Sensor { level: Level::Upper } => PartKind::UpperSensor,
            Self::Sensor { level: Level::Lower } => PartKind::LowerSensor,
            Self::Board => PartKind::Board,
            Self::Regulator { .. } => PartKind::Regulator,
            Self::MixingValve { .. } => PartKind::MixingValve,
            Self::Cartridge { .. } => PartKind::Cartridge,
            Self::DrainValve => PartKind::DrainValve,
            Self::Nipples => PartKind::Nipples,
            Self::Connections => PartKind::Connections,
            Self::HotLine => PartKind::HotLine,
            Self::PipeClips => PartKind::PipeClips,
            Self::ReturnCheck => PartKind::ReturnCheck,
            Self::PumpTimer => PartKind::PumpTimer,
        }
    }
}

/// Something seen that is worth telling though it is not the fault.
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Debug, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Observation {
    /// A breaker feeds something other than its label says.
    MislabelledBreaker,
    /// A second source feeds the heater.
    SecondSource,
    /// The meter's own lead is broken.
    BrokenLead,
    /// No expansion control in a closed system.
    NoExpansionControl,
    /// Water hotter than 120 °F at the tap.
    ScaldingWater,
    /// A breaker larger than its wire allows.
    OversizedBreaker,
    /// A discharge pipe of plastic.
    PlasticDischarge,
    /// A discharge pipe that rises.
    UphillDischarge,
    /// Steel on copper without dielectric fittings.
    NoDielectric,
    /// No pan where a leak would do harm below.
    NoPan,
    /// A discharge pipe with a cap on its end.
    CappedDischarge,
    /// A relief valve that lets nothing out.
    BlockedRelief,
    /// A high limit with its poles bridged.
    BridgedLimit,
    /// An element of another rating than the plate's.
    OtherElement,
}

/// Somebody to call instead of going on.
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Debug, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Helper {
    /// A licensed electrician.
    Electrician,
    /// A licensed plumber.
    Plumber,
    /// The utility.
    Utility,
    /// An ambulance.
    Ambulance,
}
