//! Reading a quantity as a person writes it: a bare number in SI, or a number with its unit.

use serde::de::{Error, Visitor};
use serde::{Deserialize, Deserializer};

/// What is read, and the units it may be written in: name, factor, offset.
pub(super) struct Written {
    pub what: &'static str,
    pub units: &'static [(&'static str, f64, f64)],
}

impl Written {
    /// Reads it: from text as people write it, from packed bytes as the number it is, whatever it is.
    pub fn read<'de, D: Deserializer<'de>>(self, from: D) -> Result<f64, D::Error> {
        if from.is_human_readable() { from.deserialize_any(self) } else { f64::deserialize(from) }
    }

    fn finite<E: Error>(&self, value: f64) -> Result<f64, E> {
        if value.is_finite() {
            Ok(value)
        } else {
            Err(E::custom(format!("{} has to be a finite number", self.what)))
        }
    }
}

impl Visitor<'_> for Written {
    type Value = f64;

    fn expecting(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        write!(f, "{}: a number in SI, or text with one of the units", self.what)?;
        self.units.iter().try_for_each(|(name, ..)| write!(f, " {name}"))
    }
    fn visit_f64<E: Error>(self, value: f64) -> Result<f64, E> {
        self.finite(value)
    }
    fn visit_i64<E: Error>(self, value: i64) -> Result<f64, E> {
        Ok(value as f64)
    }
    fn visit_u64<E: Error>(self, value: u64) -> Result<f64, E> {
        Ok(value as f64)
    }
    fn visit_str<E: Error>(self, text: &str) -> Result<f64, E> {
        let unknown = || E::invalid_value(serde::de::Unexpected::Str(text), &self);
        let cut = text.find(|c: char| c.is_whitespace() || c == '°').or_else(|| {
            text.char_indices().find(|(_, c)| c.is_ascii_alphabetic() && *c != 'e').map(|(i, _)| i)
        });
        let (number, unit) = text.split_at(cut.ok_or_else(unknown)?);
        let unit = unit.trim_start_matches(|c: char| c.is_whitespace() || c == '°').trim_end();
        let number = crate::decimal::read(number).ok_or_else(unknown)?;
        let (_, factor, offset) = self.units.iter().find(|(name, ..)| *name == unit).ok_or_else(unknown)?;
        self.finite(number * factor + offset)
    }
}
