//! A verdict as text: a fault's name, `nothing` for nothing wrong, and none where none was written.

use plant::FaultId;
use serde::de::Error as _;
use serde::{Deserialize, Deserializer, Serializer};

/// Nothing is wrong.
const NOTHING: &str = "nothing";

type Verdict = Option<Option<FaultId>>;

pub fn serialize<S: Serializer>(verdict: &Verdict, s: S) -> Result<S::Ok, S::Error> {
    match verdict {
        None => s.serialize_none(),
        Some(None) => s.serialize_some(NOTHING),
        Some(Some(fault)) => s.serialize_some(fault),
    }
}

pub fn deserialize<'de, D: Deserializer<'de>>(d: D) -> Result<Verdict, D::Error> {
    match Option::<String>::deserialize(d)?.as_deref() {
        None => Ok(None),
        Some(NOTHING) => Ok(Some(None)),
        Some(name) => name.parse().map(|fault| Some(Some(fault))).map_err(D::Error::custom),
    }
}
