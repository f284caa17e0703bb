//! What can happen to people and things, with the numbers it is told with.
//!
//! Plain data: a harm is produced by an action in the simulated world, recorded, shown and judged. Its
//! severity is computed from its numbers, never stored beside them.

use plant::Level;
use quantity::{
    Amps, Constant, Joules, Kilograms, Ohms, Pressure, Seconds, Tag, Temperature, Volts, Volume, Watts,
};
use serde::{Deserialize, Serialize};

use super::body::Settled;
use super::burn::{Degree, Source};
use super::shock::{self, Curve, Path, ShockZone};

/// How bad it was, mildest first.
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Debug, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Severity {
    /// Nothing hurt or spoilt, this time.
    NearMiss,
    /// Somebody hurt in a way that heals, or something spoilt.
    Injury,
    /// A life in danger, lasting injury, or a home ruined.
    Grave,
}

/// Whom it happened to.
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Debug, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Who {
    /// The one at work.
    Technician,
    /// A grown-up of the household.
    Adult,
    /// A child of the household.
    Child,
}

/// A current through somebody.
#[derive(Clone, Copy, PartialEq, Debug, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Shock {
    /// Whom.
    pub who: Who,
    /// Voltage over the body and what is worn, while touching.
    pub volts: Volts,
    /// Impedance of the body and what is worn at that voltage.
    pub impedance: Ohms,
    /// Current through the body.
    pub current: Amps,
    /// The way it took.
    pub path: Path,
    /// How long it lasted.
    pub duration: Seconds,
    /// The current left hand to feet that endangers the heart alike.
    pub equivalent: Amps,
    /// When it would cross the c1 curve; absent if never.
    pub crosses_c1: Option<Seconds>,
    /// The zone it ended in.
    pub zone: ShockZone,
}

/// Heat on somebody's skin.
#[derive(Clone, Copy, PartialEq, Debug, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Burn {
    /// Whom.
    pub who: Who,
    /// What touched the skin.
    pub source: Source,
    /// How hot it was.
    pub temperature: Temperature,
    /// For how long.
    pub seconds: Seconds,
    /// Burn integral at the basal layer; 1 is a second-degree burn.
    pub omega: f64,
    /// Highest temperature of the basal layer.
    pub basal_peak: Temperature,
    /// What it left.
    pub degree: Degree,
}

/// Something that happened to people or things.
#[derive(Clone, Copy, PartialEq, Debug, Serialize, Deserialize)]
#[serde(tag = "harm", rename_all = "kebab-case", deny_unknown_fields)]
pub enum Harm {
    /// A current through somebody.
    Shock(Shock),
    /// Heat on somebody's skin.
    Burn(Burn),
    /// Water where it does damage.
    Flood {
        /// How much was spilt.
        volume: Volume,
    },
    /// An element was run in air until its coil broke.
    ElementBurntOut {
        /// Which one.
        element: Level,
        /// Power it had when it was switched on.
        power: Watts,
        /// Time from then until it broke.
        after: Seconds,
        /// Temperature its sheath had reached.
        sheath: Temperature,
    },
    /// A fault current flowed through a lead, a tool or a wire end, and threw an arc.
    ArcFlash {
        /// Voltage that drove it.
        volts: Volts,
        /// Current while it lasted.
        current: Amps,
        /// Time until it was cleared.
        cleared_after: Seconds,
        /// Energy set free where it struck.
        energy: Joules,
        /// Gloves and eye protection were on.
        protected: bool,
    },
    /// A meter was set on something it cannot stand: ohms or amperes across a live pair.
    MeterOverloaded {
        /// Voltage it met.
        volts: Volts,
    },
    /// Gas that burns came out of a tap: hydrogen that the anode had set free.
    FlammableGas {
        /// How much, at room pressure.
        volume: Volume,
    },
    /// The insulation tester's voltage met a control board.
    BoardDamaged {
        /// The test voltage.
        volts: Volts,
    },
    /// Water above boiling came out and flashed.
    Steam {
        /// Temperature of the water before it came out.
        water: Temperature,
        /// Gauge pressure that drove it.
        pressure: Pressure,
        /// Amount of water let out.
        volume: Volume,
    },
    /// The tank was pushed past its working pressure with nothing to relieve it.
    Overpressure {
        /// Highest gauge pressure.
        pressure: Pressure,
        /// Working pressure on its plate.
        working: Pressure,
    },
    /// A joint turned enough power into heat to char or light what is around it.
    JointOverheated {
        /// Power lost in the joint.
        power: Watts,
        /// How long it went on.
        seconds: Seconds,
    },
    /// A back strained: too much lifted alone.
    Strain {
        /// How much.
        mass: Kilograms,
    },
    /// Legionella: the stored water was left where they grow.
    TankLukewarm {
        /// Temperature it was left at.
        temperature: Temperature,
    },
}

quantity::constants! {
    /// A wet towel's worth; more soaks floors.
    const PUDDLE: Constant<Volume> = Constant::of("water that soaks a floor", Volume::litres(2.0), Tag::Model("more than a wet towel takes up"));
    /// Enough to reach the rooms below.
    const DELUGE: Constant<Volume> = Constant::of("water that reaches the rooms below", Volume::litres(100.0), Tag::Model("an order of magnitude: a bathtub nearly full"));
    /// A tank is proved at twice its working pressure: past this it may burst. Memory: UL 174, 300 psi for a
    /// working pressure of 150 psi.
    const PROOF_FACTOR: Constant = Constant::new("pressure at which a tank may burst, over its working pressure", 2.0, "1", Tag::Memory("UL 174: proved at 300 psi for a working pressure of 150 psi"));
    /// Arc energy that burns a hand 15 cm away through what it wears: 1.2 cal/cm2 (5.0 J/cm2) over that
    /// sphere. Memory: NFPA 70E, onset of a second-degree burn; computed from it.
    const ARC_BURNS: Constant<Joules> = Constant::of("arc energy that burns a hand 15 cm away", Joules(5.0 * 4.0 * std::f64::consts::PI * 15.0 * 15.0), Tag::Memory("NFPA 70E, onset of a second-degree burn: 1.2 cal/cm² (5.0 J/cm²), here over that sphere"));
    /// Arc energy that throws molten copper into bare eyes and hands.
    const ARC_SPATTERS: Constant<Joules> = Constant::of("arc energy that throws molten copper", Joules(1000.0), Tag::Model("enough to melt a gram of copper and more"));
    /// Most of a fault's power that an arc can take. Memory: R. H. Lee, 1982, half the bolted power.
    const ARC_SHARE: Constant = Constant::new("most of a fault's power that an arc can take", 0.5, "1", Tag::Memory("R. H. Lee 1982, half the bolted power"));
}

impl Harm {
    /// How bad it was.
    pub fn severity(&self) -> Severity {
        match *self {
            Self::Shock(shock) => shock.severity(),
            Self::Burn(burn) => burn.severity(),
            Self::Flood { volume } if volume < PUDDLE.get() => Severity::NearMiss,
            Self::Flood { volume } if volume < DELUGE.get() => Severity::Injury,
            Self::Flood { .. } => Severity::Grave,
            Self::ElementBurntOut { .. } | Self::BoardDamaged { .. } | Self::Strain { .. } => {
                Severity::Injury
            }
            Self::ArcFlash { energy, protected, .. } => {
                let limit = if protected { ARC_BURNS.get() } else { ARC_SPATTERS.get() };
                if energy < limit { Severity::NearMiss } else { Severity::Injury }
            }
            Self::MeterOverloaded { .. } | Self::FlammableGas { .. } => Severity::NearMiss,
            Self::Steam { .. } => Severity::Grave,
            Self::Overpressure { pressure, working }
                if pressure.get() < working.get() * PROOF_FACTOR.get() =>
            {
                Severity::NearMiss
            }
            Self::Overpressure { .. } => Severity::Grave,
            Self::JointOverheated { .. } | Self::TankLukewarm { .. } => Severity::NearMiss,
        }
    }

    /// An arc from the voltage, the bolted current it could drive and the time until it was cleared.
    pub fn arc(volts: Volts, current: Amps, cleared_after: Seconds, protected: bool) -> Self {
        let energy = Joules(ARC_SHARE.get() * (volts.get() * current.get()).abs() * cleared_after.get());
        Self::ArcFlash { volts, current, cleared_after, energy, protected }
    }

    /// Whether it takes an ambulance: a current that can hold somebody, whose heart has to be watched afterwards
    /// (trade sheet 10.16, common practice); skin burnt through, or blisters on a child (from memory: what burn units
    /// ask to be sent); what an arc or steam does to somebody.
    pub fn needs_ambulance(&self) -> bool {
        match self {
            Self::Burn(Burn { who: Who::Child, degree: Degree::Second, .. }) => true,
            Self::Burn(burn) => burn.degree == Degree::Third,
            // A back heals with rest.
            Self::Strain { .. } => false,
            _ => self.bodily() && self.severity() >= Severity::Injury,
        }
    }

    /// Whether it happened to somebody of the household, so that the technician can still act.
    pub const fn to_household(&self) -> bool {
        matches!(
            self,
            Self::Shock(Shock { who: Who::Adult | Who::Child, .. })
                | Self::Burn(Burn { who: Who::Adult | Who::Child, .. })
        )
    }

    /// Whether it concerns a person's body rather than things.
    pub const fn bodily(&self) -> bool {
        matches!(
            self,
            Self::Shock(_) | Self::Burn(_) | Self::Steam { .. } | Self::ArcFlash { .. } | Self::Strain { .. }
        )
    }
}

impl Shock {
    /// The shock of a touch that has been brought to agree with its circuit.
    pub fn of(who: Who, path: Path, settled: Settled, duration: Seconds) -> Self {
        let judged = shock::shock(settled.current, path, duration);
        Self {
            who,
            volts: settled.volts.abs(),
            impedance: settled.impedance,
            current: settled.current,
            path,
            duration,
            equivalent: judged.equivalent,
            crosses_c1: judged.crosses_c1,
            zone: judged.zone,
        }
    }

    /// When it would cross a curve of the danger to the heart, if it went on.
    pub fn crosses(&self, curve: Curve) -> Option<Seconds> {
        curve.crossing(self.equivalent)
    }

    /// The worst curve it crossed while it lasted.
    pub fn crossed(&self) -> Option<Curve> {
        let past = |curve: &Curve| self.crosses(*curve).is_some_and(|t| t <= self.duration);
        Curve::ALL.into_iter().rev().find(past)
    }

    /// How bad: felt is a near miss, unable to let go an injury, past c1 grave.
    pub const fn severity(&self) -> Severity {
        match self.zone {
            ShockZone::Imperceptible | ShockZone::Perceptible => Severity::NearMiss,
            ShockZone::LetGoAtRisk | ShockZone::BeyondLetGo => Severity::Injury,
            ShockZone::Fibrillation => Severity::Grave,
        }
    }
}

impl Burn {
    /// How bad: none is a near miss, first and second degree an injury, third grave.
    pub const fn severity(&self) -> Severity {
        match self.degree {
            Degree::None => Severity::NearMiss,
            Degree::First | Degree::Second => Severity::Injury,
            Degree::Third => Severity::Grave,
        }
    }
}

#[cfg(test)]
mod tests;
