//! The catalogue of faults. One file each; a fault is an effect on the physics, never a sentence.

mod f01;
mod f02;
mod f03;
mod f04;
mod f05;
mod f06;
mod f08;
mod f09;
mod f10;
mod f11;
mod f12;
mod f13;
mod f14;
mod f18;
mod f19;
mod f23;
mod f27;
mod f35;
mod f36;
mod f37;
mod f45;
mod f50;
mod inspect;
mod numbers;
mod sound;

pub use inspect::Defect;
pub(crate) use numbers::sources;
pub use numbers::{Parameter, Parameters, level_of, place_in};
use numbers::{chosen, is_second, level_in, parameter, weight};

use quantity::{Constant, Draw, Listed};
use serde::{Deserialize, Serialize};

use crate::home::Home;
use crate::named::{QUOTED, named};
use crate::points::End;

named! {
    /// A fault, numbered as in section 9 of the trade sheet.
    FaultId {
        /// Lower element open.
        F01 = "F01",
        /// Upper element open.
        F02 = "F02",
        /// Tank shell corroded through.
        F03 = "F03",
        /// Demand beyond capacity.
        F04 = "F04",
        /// Upper thermostat welded calling.
        F05 = "F05",
        /// Lower thermostat welded calling.
        F06 = "F06",
        /// Limit tripped, cause gone.
        F08 = "F08",
        /// Limit, one pole burnt.
        F09 = "F09",
        /// Upper thermostat fails to transfer.
        F10 = "F10",
        /// Upper thermostat never feeds the upper element.
        F11 = "F11",
        /// Lower thermostat open.
        F12 = "F12",
        /// Lower element grounded mid-coil.
        F13 = "F13",
        /// Element grounded near an end.
        F14 = "F14",
        /// Breaker off or tripped, no fault behind it.
        F18 = "F18",
        /// Breaker, one pole not making.
        F19 = "F19",
        /// Burnt splice in the junction box.
        F23 = "F23",
        /// 240 V element on a 208 V supply.
        F27 = "F27",
        /// Dial set high.
        F35 = "F35",
        /// Dials unequal.
        F36 = "F36",
        /// Dip tube broken or missing.
        F37 = "F37",
        /// Thermal expansion in a closed system.
        F45 = "F45",
        /// Element gasket leaks.
        F50 = "F50",
    }
}

/// The lists of this folder.
pub(crate) const SOURCES: &[&[Listed]] = &[inspect::CONSTANTS, sound::CONSTANTS];

/// What has to be done about a fault by somebody whose licence allows it.
#[derive(Clone, Copy, PartialEq, Debug)]
pub enum Remedy {
    /// A part has to be changed for one that matches the plate.
    Replace(PartKind),
    /// A wire end has to be cut back, made again and torqued.
    Remake(&'static [End]),
    /// Press the limit's button once the cause is known to be gone.
    ResetLimit,
    /// Close the breaker once the elements are known to be clear of ground.
    CloseBreaker,
    /// Both dials to 120 °F.
    SetDials,
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
        /// High limit.
        Limit = "limit",
        /// The heater's breaker.
        Breaker = "breaker",
        /// A fuse, where there is one.
        Fuse = "fuse",
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
}

/// Everything the catalogue knows about one fault.
#[derive(Clone, Copy)]
pub struct Fault {
    /// Its number.
    pub id: FaultId,
    /// Its module, for the list of sources.
    pub module: &'static str,
    /// How often it is met, relative to the others.
    pub weight: Constant,
    /// The numbers it is drawn with.
    pub parameters: &'static [Parameter],
    /// Whether it can live in this house.
    pub fits: fn(&Home) -> bool,
    /// Its effect on the house. Sets fields only; time does the rest.
    pub apply: fn(&Parameters, &mut Home),
    /// What puts it right; more than one where either will do.
    pub remedies: &'static [Remedy],
    /// Whose work that is.
    pub scope: Scope,
    /// The part commonly changed in error for it.
    pub tempting: PartKind,
}

/// A fault with its numbers, as a drill file writes it.
#[derive(Clone, PartialEq, Debug, Serialize, Deserialize)]
pub struct FaultCase {
    /// Which fault.
    pub id: FaultId,
    /// Its numbers; those left out are drawn.
    #[serde(flatten)]
    pub parameters: Parameters,
}

/// Why a fault case cannot be used.
#[derive(Clone, PartialEq, Debug, thiserror::Error)]
pub enum FaultError {
    /// A number it does not have.
    #[error("{id} has no parameter {name:?}; it has {known}")]
    UnknownParameter {
        /// The fault.
        id: FaultId,
        /// The name found.
        name: String,
        /// The names there are.
        known: String,
    },
    /// A number outside its range.
    #[error("{id}: {name} must lie between {low} and {high} {unit}, not {value}")]
    OutOfRange {
        /// The fault.
        id: FaultId,
        /// The parameter.
        name: &'static str,
        /// Smallest value.
        low: f64,
        /// Largest value.
        high: f64,
        /// Unit.
        unit: &'static str,
        /// The value found.
        value: f64,
    },
    /// It cannot live in this house.
    #[error("{id} cannot be in this house: see its file for the equipment it needs")]
    DoesNotFit {
        /// The fault.
        id: FaultId,
    },
}

impl Fault {
    /// Checks given numbers and draws the others. The draw depends only on the stream, not on what was given.
    pub fn complete(&self, given: &Parameters, draw: &mut Draw) -> Result<Parameters, FaultError> {
        let known = || self.parameters.iter().map(|p| p.name).collect::<Vec<_>>().join(", ");
        for name in given.keys() {
            if !self.parameters.iter().any(|p| p.name == name) {
                let name = name.chars().take(QUOTED.get()).collect();
                return Err(FaultError::UnknownParameter { id: self.id, name, known: known() });
            }
        }
        let mut all = Parameters::new();
        for p in self.parameters {
            let drawn = p.draw(draw);
            let value = given.get(p.name).copied().unwrap_or(drawn);
            if !(p.low..=p.high).contains(&value) {
                let Parameter { name, low, high, unit, .. } = *p;
                return Err(FaultError::OutOfRange { id: self.id, name, low, high, unit, value });
            }
            all.insert(p.name.to_owned(), value);
        }
        Ok(all)
    }
}

impl FaultId {
    /// Its catalogue entry.
    pub const fn fault(self) -> &'static Fault {
        match self {
            Self::F01 => &f01::FAULT,
            Self::F02 => &f02::FAULT,
            Self::F03 => &f03::FAULT,
            Self::F04 => &f04::FAULT,
            Self::F05 => &f05::FAULT,
            Self::F06 => &f06::FAULT,
            Self::F08 => &f08::FAULT,
            Self::F09 => &f09::FAULT,
            Self::F10 => &f10::FAULT,
            Self::F11 => &f11::FAULT,
            Self::F12 => &f12::FAULT,
            Self::F13 => &f13::FAULT,
            Self::F14 => &f14::FAULT,
            Self::F18 => &f18::FAULT,
            Self::F19 => &f19::FAULT,
            Self::F23 => &f23::FAULT,
            Self::F27 => &f27::FAULT,
            Self::F35 => &f35::FAULT,
            Self::F36 => &f36::FAULT,
            Self::F37 => &f37::FAULT,
            Self::F45 => &f45::FAULT,
            Self::F50 => &f50::FAULT,
        }
    }

    /// What puts right this fault with these numbers. Where a fault can sit in one of two like places, its
    /// remedies are listed in the order of the parameter `level` or `leg` that says which.
    pub fn remedy(self, parameters: &Parameters) -> Option<Remedy> {
        let remedies = self.fault().remedies;
        let place = ["level", "leg"].iter().find_map(|name| parameters.get(*name));
        let index = usize::from(remedies.len() == 2 && place.is_some_and(|p| is_second(*p)));
        remedies.get(index).copied()
    }

    /// Whether one repair serves both: changing the same part, or the same words.
    pub fn same_repair(self, other: Self) -> bool {
        self == other || self.fault().remedies == other.fault().remedies
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_entry_is_its_own() {
        FaultId::ALL.iter().for_each(|&id| {
            assert_eq!(id.fault().id, id);
            assert!(id.fault().weight.get() > 0.0 && !id.fault().remedies.is_empty());
        });
    }

    #[test]
    fn given_numbers_stay_and_others_are_drawn_within_range() {
        let fault = FaultId::F13.fault();
        let given = Parameters::from([("fraction".to_owned(), 0.5)]);
        let all = fault.complete(&given, &mut Draw::new(3, "fault")).unwrap();
        assert_eq!(all["fraction"], 0.5);
        assert!((0.05..=0.5).contains(&all["ohms"]));
        let wrong = Parameters::from([("fraction".to_owned(), 0.9)]);
        assert!(fault.complete(&wrong, &mut Draw::new(3, "fault")).is_err());
        let unknown = Parameters::from([("colour".to_owned(), 0.9)]);
        assert!(fault.complete(&unknown, &mut Draw::new(3, "fault")).is_err());
    }
}
