//! Wishes short of a name: how hard, of which family, what it shall look like. What the reasoning core says of each fault
//! stands in `alike.json`, written by walking every house (`tests/tests/dealing/alike.rs`).

use std::sync::OnceLock;

use plant::fault::FaultId;
use serde::{Deserialize, Serialize};

use crate::order::{Order, Wanted};

/// How hard a fault is to tell from the one that looks most like it and asks for another repair.
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Debug, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Level {
    /// Much tells it: the third of the catalogue with the most telling acts.
    Plain,
    /// Some acts tell it.
    Middling,
    /// Few acts tell it.
    Hard,
}

impl Level {
    /// All of them, in the order they are offered; drill codes count by it.
    pub const ALL: [Self; 3] = [Self::Plain, Self::Middling, Self::Hard];
}

/// Faults that are learnt together. Each fault belongs to one family.
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Debug, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Family {
    /// Elements: open, grounded, shorted, of the wrong power.
    Elements,
    /// Thermostats, limits, sensors, boards, dials.
    Controls,
    /// Breakers, fuses, service, cables, joints, wrong wires.
    Supply,
    /// Too little or too hot water with nothing electrical amiss.
    HotWater,
    /// Leaks, pressure and relief.
    Leaks,
    /// Smell, colour, noise, gas: the water itself.
    Water,
}

impl Family {
    /// All of them, in the order they are offered; drill codes count by it.
    pub const ALL: [Self; 6] =
        [Self::Elements, Self::Controls, Self::Supply, Self::HotWater, Self::Leaks, Self::Water];

    /// Its faults.
    pub const fn faults(self) -> &'static [FaultId] {
        use FaultId::*;
        match self {
            Self::Elements => &[F01, F02, F13, F14, F15, F16, F17, F29, F67, F75, F76],
            Self::Controls => &[
                F05, F06, F07, F08, F09, F10, F11, F12, F33, F34, F35, F36, F48, F60, F61, F62, F68, F70,
                F71, F72, F77,
            ],
            Self::Supply => {
                &[F18, F19, F20, F21, F22, F23, F24, F25, F26, F27, F28, F30, F31, F64, F65, F66, F69, F73]
            }
            Self::HotWater => &[F04, F37, F38, F39, F40, F41, F42, F43, F44, F58, F63, F74],
            Self::Leaks => &[F03, F32, F45, F46, F47, F49, F50, F51, F52, F53],
            Self::Water => &[F54, F55, F56, F57, F59],
        }
    }

    /// The family of a fault; none where it has not been given one.
    pub fn of(fault: FaultId) -> Option<Self> {
        Self::ALL.into_iter().find(|family| family.faults().contains(&fault))
    }
}

/// What the reasoning core says of one fault.
#[derive(Deserialize)]
#[serde(rename_all = "kebab-case", deny_unknown_fields)]
struct Entry {
    fault: FaultId,
    /// Acts that tell it from the likest that asks for another repair; kept beside the level that follows from them.
    #[serde(rename = "acts")]
    _acts: u32,
    level: Level,
    /// One look at the closed heater names it among all suspects.
    #[serde(default)]
    first_look: bool,
    alike: Vec<FaultId>,
}

fn all() -> &'static [Entry] {
    static TABLE: OnceLock<Vec<Entry>> = OnceLock::new();
    TABLE.get_or_init(|| serde_json::from_str(include_str!("../alike.json")).unwrap_or_default())
}

fn entry(fault: FaultId) -> Option<&'static Entry> {
    all().iter().find(|entry| entry.fault == fault)
}

/// How hard a fault is; hard where the core has not walked it.
pub fn level(fault: FaultId) -> Level {
    entry(fault).map_or(Level::Hard, |entry| entry.level)
}

/// Faults that look most like one, the likest first.
pub fn alike(fault: FaultId) -> &'static [FaultId] {
    entry(fault).map_or(&[], |entry| &entry.alike)
}

/// Whether the first look at the closed heater names a fault among all suspects: dealt only where it is asked for.
pub fn given_away(fault: FaultId) -> bool {
    entry(fault).is_some_and(|entry| entry.first_look)
}

/// An order that asks for nothing in particular.
fn asks_nothing(order: &Order) -> bool {
    order.fault == Wanted::Chance && order.level.is_none() && order.family.is_none() && order.like.is_none()
}

/// Whether a fault is what an order wishes for beyond its name.
pub(crate) fn wished(order: &Order, fault: FaultId) -> bool {
    !(asks_nothing(order) && given_away(fault))
        && order.level.is_none_or(|wanted| level(fault) == wanted)
        && order.family.is_none_or(|wanted| wanted.faults().contains(&fault))
        && order.like.is_none_or(|one| fault != one && alike(one).contains(&fault))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_fault_is_in_one_family_and_in_the_table() {
        for id in FaultId::ALL {
            let families = Family::ALL.iter().filter(|family| family.faults().contains(id)).count();
            assert_eq!(families, 1, "{id}");
            assert!(entry(*id).is_some(), "{id}: bless tests/tests/dealing/alike.rs");
            assert!(!alike(*id).is_empty() && !alike(*id).contains(id), "{id}");
        }
        assert_eq!(all().len(), FaultId::ALL.len());
        for wanted in Level::ALL {
            assert!(FaultId::ALL.iter().filter(|id| level(**id) == wanted).count() > 10, "{wanted:?}");
        }
    }
}
