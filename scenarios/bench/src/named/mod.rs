//! Reading what names itself in a field of its own, as an act does: `{"do": "lift", "end": "W4 at H1"}`.
//!
//! serde can derive it. What it derives writes the reading of every field out for every name, which for acts and parts was
//! a twentieth of the page. Here each kind of field is read by one piece, whatever it belongs to.

mod lists;

use std::fmt;

use serde::de::{DeserializeOwned, Deserializer, Error as _, MapAccess, Visitor};
use serde_json::{Error, Map, Value};

/// The fields of one such thing, those not taken yet.
pub struct Fields(Map<String, Value>);

impl Fields {
    /// All fields, in any order.
    ///
    /// # Errors
    ///
    /// For anything but an object, and for a field that stands twice.
    pub fn read<'de, D: Deserializer<'de>>(from: D) -> Result<Self, D::Error> {
        struct Each;
        impl<'de> Visitor<'de> for Each {
            type Value = Fields;

            fn expecting(&self, to: &mut fmt::Formatter) -> fmt::Result {
                to.write_str("an object that names what it is")
            }

            fn visit_map<A: MapAccess<'de>>(self, mut entries: A) -> Result<Fields, A::Error> {
                let mut all = Map::new();
                while let Some((name, value)) = entries.next_entry::<String, Value>()? {
                    if all.contains_key(&name) {
                        return Err(A::Error::custom(format_args!("duplicate field `{name}`")));
                    }
                    all.insert(name, value);
                }
                Ok(Fields(all))
            }
        }
        from.deserialize_map(Each)
    }

    /// The field of a name. One that may be missing reads as `null` does.
    ///
    /// # Errors
    ///
    /// Where it is missing or not of its type.
    pub fn take<T: DeserializeOwned>(&mut self, name: &'static str) -> Result<T, Error> {
        match self.0.remove(name) {
            Some(value) => T::deserialize(value),
            None => T::deserialize(Value::Null).map_err(|_| Error::missing_field(name)),
        }
    }

    /// Nothing may be left over.
    ///
    /// # Errors
    ///
    /// For a field that does not belong there.
    pub fn done(self) -> Result<(), Error> {
        match self.0.keys().next() {
            Some(left) => Err(Error::custom(format_args!("unknown field `{left}`"))),
            None => Ok(()),
        }
    }
}

/// Whether a name in a file is this one of the code in kebab case, as serde writes it.
pub fn is(written: &str, name: &str) -> bool {
    let mut written = written.bytes();
    let begins = name.bytes().enumerate().all(|(at, letter)| {
        let parted = at == 0 || !letter.is_ascii_uppercase() || written.next() == Some(b'-');
        parted && written.next() == Some(letter.to_ascii_lowercase())
    });
    begins && written.next().is_none()
}

/// How a type that is written with `#[serde(tag = ..., rename_all = "kebab-case")]` is read: the field that names it, then
/// every name with its fields. The compiler refuses a list that lacks one.
macro_rules! read_by_name {
    ($type:ident by $tag:literal { $($name:ident $({ $($field:ident),+ })?),+ $(,)? }) => {
        impl<'de> serde::Deserialize<'de> for $type {
            fn deserialize<D: serde::Deserializer<'de>>(from: D) -> Result<Self, D::Error> {
                const _: fn(&$type) = |one| match one {
                    $($type::$name { .. } => {})+
                };
                fn read(fields: &mut $crate::named::Fields) -> Result<$type, serde_json::Error> {
                    let name: String = fields.take($tag)?;
                    $(if $crate::named::is(&name, stringify!($name)) {
                        return Ok($type::$name { $($($field: fields.take(stringify!($field))?),+)? });
                    })+
                    Err(serde::de::Error::custom(format_args!("unknown {} `{name}`", $tag)))
                }
                let mut fields = $crate::named::Fields::read(from)?;
                let one = read(&mut fields).map_err(serde::de::Error::custom)?;
                fields.done().map_err(serde::de::Error::custom)?;
                Ok(one)
            }
        }
    };
}
use read_by_name;

#[cfg(test)]
mod tests {
    use plant::{Level, Stab};

    use super::is;
    use crate::{Action, Clamped, NewPart, Probe, Touchable};

    fn read(text: &str) -> Result<Action, String> {
        serde_json::from_str(text).map_err(|error| error.to_string())
    }

    #[test]
    fn what_is_written_is_read() {
        for action in [
            Action::PressReset,
            Action::PullFuse { leg: Stab::One, out: true },
            Action::ColdValve { opening: 0.1 + 0.2 },
            Action::Touch { at: Touchable::ReliefPipe },
            Action::Clamp { around: Clamped::BothLegs },
            Action::Thermometer { at: Probe::Shell { level: Level::Lower } },
            Action::Replace { part: NewPart::Gasket { level: Level::Upper, seat_cleaned: false } },
            Action::Finding { fault: None, evidence: vec![3, 5] },
        ] {
            assert_eq!(read(&serde_json::to_string(&action).unwrap()), Ok(action));
        }
    }

    #[test]
    fn names_are_those_serde_writes() {
        for (name, written) in
            [("Tap", "tap"), ("PressReset", "press-reset"), ("WaitForCutOut", "wait-for-cut-out")]
        {
            assert!(is(written, name));
            for other in ["", "t", "tap-", "pressreset", "press-reset-", "Press-Reset", "press--reset"] {
                assert_eq!(is(other, name), other == written, "{other} as {name}");
            }
        }
    }

    #[test]
    fn what_is_no_act_says_what_is_wrong_with_it() {
        for (text, says) in [
            (r#"{"do":"dance"}"#, "unknown do `dance`"),
            (r#"{"at":"drain"}"#, "missing field `do`"),
            (r#"{"do":"look"}"#, "missing field `at`"),
            (r#"{"do":"press-reset","hard":true}"#, "unknown field `hard`"),
            (r#"{"do":"hose","on":true,"on":false}"#, "duplicate field `on`"),
            (r#"{"do":"wait","minutes":"long"}"#, "invalid type: string \"long\", expected f64"),
            ("7", "an object that names what it is"),
        ] {
            let error = read(text).unwrap_err();
            assert!(error.contains(says), "{text}: {error}");
        }
        assert_eq!(
            read(r#"{"evidence":[],"do":"finding"}"#),
            Ok(Action::Finding { fault: None, evidence: vec![] })
        );
    }
}
