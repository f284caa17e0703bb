//! A second fault in the same house: by name, any that goes with the first, or what the first leads to in time.

use std::str::FromStr;

use plant::fault::{FaultCase, FaultId, PartKind, Remedy};
use plant::home::Home;
use serde::{Deserialize, Serialize};

/// Which second fault is wanted. In a file: `"any"`, `"follows"`, or a number such as `"F10"`.
#[derive(Clone, Copy, PartialEq, Eq, Debug, Serialize, Deserialize)]
#[serde(try_from = "String", into = "String")]
pub enum Second {
    /// Any that can be in the house beside the first, by prior weight.
    Any,
    /// The cause or the consequence of the first.
    Follows,
    /// Just this one.
    One(FaultId),
}

impl From<Second> for String {
    fn from(second: Second) -> Self {
        match second {
            Second::Any => "any".to_owned(),
            Second::Follows => "follows".to_owned(),
            Second::One(id) => id.name().to_owned(),
        }
    }
}

impl TryFrom<String> for Second {
    type Error = String;

    fn try_from(text: String) -> Result<Self, Self::Error> {
        match text.as_str() {
            "any" => Ok(Self::Any),
            "follows" => Ok(Self::Follows),
            name => FaultId::from_str(name).map(Self::One).map_err(|error| error.to_string()),
        }
    }
}

/// What leads to what when nobody comes in time; changing the second alone brings the call back. Common practice, no
/// source, except F41 and F01 (trade sheet 9: the element repeats under sediment).
const FOLLOWS: &[(FaultId, FaultId)] = &[
    // Grit on the lower element overheats it until it opens; the flush that was due is still due.
    (FaultId::F41, FaultId::F01),
    // The same grit sits in the drain valve.
    (FaultId::F41, FaultId::F51),
    // Aluminium under a copper connector creeps, and the joint burns.
    (FaultId::F25, FaultId::F23),
    // A relief valve that has lifted every night for a year no longer seats.
    (FaultId::F45, FaultId::F47),
    (FaultId::F46, FaultId::F47),
    (FaultId::F49, FaultId::F47),
    // Too many amperes through a breaker tire it.
    (FaultId::F30, FaultId::F20),
    (FaultId::F15, FaultId::F20),
    // Too big an element heats the screws it hangs on.
    (FaultId::F29, FaultId::F24),
    // Water that runs down from a gasket rots the screw below it.
    (FaultId::F50, FaultId::F24),
];

/// Whether one of two faults leads to the other.
pub fn follows(one: FaultId, other: FaultId) -> bool {
    FOLLOWS.iter().any(|pair| *pair == (one, other) || *pair == (other, one))
}

/// Whether two faults can be in a house together, each to be found and put right by itself: neither hides in the
/// other's fields or behind what the other trips, both are there to an inspection, and no repair of the one is the
/// other's as well.
pub fn go_together(sound: &Home, first: &FaultCase, second: &FaultCase) -> bool {
    let alone = |case: &FaultCase| {
        let mut home = sound.clone();
        put(case, &mut home);
        home
    };
    let repair = |case: &FaultCase| case.id.remedy(&case.parameters);
    if first.id.same_repair(second.id)
        || repair(first) == repair(second)
        || [first, second].iter().any(|case| case.id.is_silent() || takes_all(case))
        || !(second.id.fault().fits)(sound)
        || is_hidden_by(first, second)
        || is_hidden_by(second, first)
    {
        return false;
    }
    let (mut one, mut other) = (alone(first), alone(second));
    let (of_one, of_other) = (one.inspect(), other.inspect());
    put(second, &mut one);
    put(first, &mut other);
    if one != other {
        return false;
    }
    let both = one.inspect();
    of_one.iter().chain(&of_other).all(|defect| both.contains(defect))
        && of_one.iter().any(|defect| !of_other.contains(defect))
        && of_other.iter().any(|defect| !of_one.contains(defect))
}

fn put(case: &FaultCase, home: &mut Home) {
    (case.id.fault().apply)(&case.parameters, home);
}

/// Tripped once with nothing behind it, beside what trips it again and again: nobody could tell that it was there.
fn is_hidden_by(case: &FaultCase, other: &FaultCase) -> bool {
    match case.id {
        FaultId::F08 => diagnosis::trips_limit(other.id),
        FaultId::F18 => diagnosis::trips_breaker(other.id),
        _ => false,
    }
}

/// Whether one of two is gone from a house that was lived in: nothing that an inspection finds of it alone is found
/// any more.
pub fn is_gone(sound: &Home, case: &FaultCase, lived: &Home) -> bool {
    let mut alone = sound.clone();
    put(case, &mut alone);
    let found = lived.inspect();
    !alone.inspect().iter().any(|defect| found.contains(defect))
}

/// A whole new heater would take the other fault away with the old one.
fn takes_all(case: &FaultCase) -> bool {
    matches!(case.id.remedy(&case.parameters), Some(Remedy::Replace(PartKind::Heater)))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_second_reads_as_it_is_written() {
        for second in [Second::Any, Second::Follows, Second::One(FaultId::F10)] {
            let text = serde_json::to_string(&second).unwrap();
            assert_eq!(serde_json::from_str::<Second>(&text).unwrap(), second);
        }
        assert!(serde_json::from_str::<Second>("\"F99\"").is_err());
    }
}
