//! Closed lists whose members have a name on the drawing and in files.

use quantity::{Constant, Tag};

macro_rules! named {
    ($(#[$doc:meta])* $name:ident { $($(#[$vdoc:meta])* $variant:ident = $text:literal,)* }) => {
        $(#[$doc])*
        #[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Debug)]
        pub enum $name { $($(#[$vdoc])* $variant,)* }

        impl $name {
            /// All of them, in the order of the drawing.
            pub const ALL: &[Self] = &[$(Self::$variant,)*];
            /// Its name on the drawing and in files.
            pub const fn name(self) -> &'static str {
                match self { $(Self::$variant => $text,)* }
            }
        }
        impl std::fmt::Display for $name {
            fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result { f.pad(self.name()) }
        }
        impl std::str::FromStr for $name {
            type Err = $crate::named::UnknownName;
            fn from_str(text: &str) -> Result<Self, $crate::named::UnknownName> {
                Self::ALL.iter().copied().find(|v| v.name().eq_ignore_ascii_case(text))
                    .ok_or_else(|| $crate::named::UnknownName { kind: stringify!($name), text: text.chars().take($crate::named::QUOTED.get()).collect() })
            }
        }
        impl serde::Serialize for $name {
            fn serialize<S: serde::Serializer>(&self, s: S) -> Result<S::Ok, S::Error> { s.serialize_str(self.name()) }
        }
        impl<'de> serde::Deserialize<'de> for $name {
            fn deserialize<D: serde::Deserializer<'de>>(d: D) -> Result<Self, D::Error> {
                <String as serde::Deserialize>::deserialize(d)?.parse().map_err(serde::de::Error::custom)
            }
        }
    };
}
pub(crate) use named;

quantity::constants! {
    /// Characters of a wrong name that a refusal quotes.
    pub(crate) const QUOTED: Constant<usize> =
        Constant::new("characters of a wrong name that are quoted", 40, "", Tag::Model("long enough to know it by"));
}

/// A name that stands for nothing here.
#[derive(Clone, PartialEq, Eq, Debug, thiserror::Error)]
#[error("{text:?} is not a {kind}")]
pub struct UnknownName {
    /// What was looked for.
    pub kind: &'static str,
    /// What was found, cut short.
    pub text: String,
}
