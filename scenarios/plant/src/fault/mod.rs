//! The catalogue of faults. One file each; a fault is an effect on the physics, never a sentence.

mod catalogue;
mod f01;
mod f02;
mod f03;
mod f04;
mod f05;
mod f06;
mod f07;
mod f08;
mod f09;
mod f10;
mod f11;
mod f12;
mod f13;
mod f14;
mod f15;
mod f16;
mod f17;
mod f18;
mod f19;
mod f20;
mod f21;
mod f22;
mod f23;
mod f24;
mod f25;
mod f26;
mod f27;
mod f28;
mod f29;
mod f30;
mod f31;
mod f32;
mod f33;
mod f34;
mod f35;
mod f36;
mod f37;
mod f38;
mod f39;
mod f40;
mod f41;
mod f42;
mod f43;
mod f44;
mod f45;
mod f46;
mod f47;
mod f48;
mod f49;
mod f50;
mod f51;
mod f52;
mod f53;
mod f54;
mod f55;
mod f56;
mod f57;
mod f58;
mod f59;
mod f60;
mod f61;
mod f62;
mod f63;
mod f64;
mod f65;
mod f66;
mod f67;
mod f68;
mod f69;
mod f70;
mod f71;
mod f72;
mod f73;
mod f74;
mod f75;
mod f76;
mod f77;
mod inspect;
mod numbers;
mod remedy;
mod sound;
mod stage;
mod worn;

pub use catalogue::FaultId;
pub(crate) use f53::is_damp;
pub use inspect::Defect;
pub(crate) use numbers::sources;
pub use numbers::{Parameter, Parameters, level_of, place_in};
use numbers::{chosen, is_second, level_in, parameter, weight};
pub use remedy::{Advice, PartKind, Remedy, Scope};
pub use stage::{Stage, Stages, Way};

use quantity::{Constant, Draw, Listed};
use serde::{Deserialize, Serialize};

use crate::home::Home;
use crate::named::QUOTED;

/// The lists of this folder.
pub(crate) const SOURCES: &[&[Listed]] = &[
    f20::CONSTANTS,
    f25::CONSTANTS,
    f29::CONSTANTS,
    f39::CONSTANTS,
    f41::CONSTANTS,
    f42::CONSTANTS,
    f46::CONSTANTS,
    f49::CONSTANTS,
    f53::CONSTANTS,
    f63::CONSTANTS,
    f64::CONSTANTS,
    inspect::CONSTANTS,
    sound::CONSTANTS,
    worn::CONSTANTS,
];

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
    /// What of them tells how far it has gone.
    pub stages: Stages,
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
    /// What puts right this fault with these numbers. Where a fault can sit in one of two like places, its
    /// remedies are listed in the order of the parameter `level`, `leg`, `clock`, `check`, `lug` or `tandem` that says which. What
    /// is the utility's is mended by the utility.
    pub fn remedy(self, parameters: &Parameters) -> Option<Remedy> {
        if chosen(parameters, f26::UTILITY) {
            return Some(Remedy::CallUtility);
        }
        let remedies = self.fault().remedies;
        let place =
            ["level", "leg", "clock", "check", "lug", "tandem"].iter().find_map(|name| parameters.get(*name));
        let index = usize::from(remedies.len() >= 2 && place.is_some_and(|p| is_second(*p)));
        remedies.get(index).copied()
    }

    /// Whose work that is.
    pub fn scope(self, parameters: &Parameters) -> Scope {
        match self.remedy(parameters) {
            Some(Remedy::CallUtility) => Scope::Utility,
            _ => self.fault().scope,
        }
    }

    /// Nobody calls for it: it shows to somebody who looks for it, and explains no complaint.
    pub const fn is_silent(self) -> bool {
        matches!(self, Self::F56 | Self::F64 | Self::F75)
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
