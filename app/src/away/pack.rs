//! Values as bytes for the way between page and worker: field after field, nothing named, nothing aligned. Both
//! ends are the same module, so neither needs to describe to the other what comes.

use std::fmt;

use serde::ser::{self, Serialize};

/// The bytes of a value.
pub fn pack(value: &impl Serialize) -> Result<Vec<u8>, Broken> {
    let mut packer = Packer(Vec::new());
    value.serialize(&mut packer)?;
    Ok(packer.0)
}

/// Why something cannot be packed or unpacked.
#[derive(Clone, PartialEq, Eq, Debug)]
pub struct Broken(pub String);

impl fmt::Display for Broken {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(&self.0)
    }
}

impl std::error::Error for Broken {}

impl ser::Error for Broken {
    fn custom<T: fmt::Display>(why: T) -> Self {
        Self(why.to_string())
    }
}

impl serde::de::Error for Broken {
    fn custom<T: fmt::Display>(why: T) -> Self {
        Self(why.to_string())
    }
}

type Done = Result<(), Broken>;

struct Packer(Vec<u8>);

impl Packer {
    fn number(&mut self, number: u64) {
        self.0.extend(number.to_le_bytes());
    }

    /// A length, or which of an enum's variants it is.
    fn count(&mut self, count: usize) {
        self.0.extend((count as u32).to_le_bytes());
    }
}

macro_rules! numbers {
    ($($method:ident($type:ty) = |$v:ident| $bits:expr;)*) => {
        $(fn $method(self, $v: $type) -> Done {
            self.number($bits);
            Ok(())
        })*
    };
}

impl ser::Serializer for &mut Packer {
    type Ok = ();
    type Error = Broken;
    type SerializeSeq = Self;
    type SerializeTuple = Self;
    type SerializeTupleStruct = Self;
    type SerializeTupleVariant = Self;
    type SerializeMap = Self;
    type SerializeStruct = Self;
    type SerializeStructVariant = Self;

    numbers! {
        serialize_i8(i8) = |v| i64::from(v) as u64;
        serialize_i16(i16) = |v| i64::from(v) as u64;
        serialize_i32(i32) = |v| i64::from(v) as u64;
        serialize_i64(i64) = |v| v as u64;
        serialize_u16(u16) = |v| u64::from(v);
        serialize_u32(u32) = |v| u64::from(v);
        serialize_u64(u64) = |v| v;
        serialize_f32(f32) = |v| f64::from(v).to_bits();
        serialize_f64(f64) = |v| v.to_bits();
        serialize_char(char) = |v| u64::from(v);
    }

    fn is_human_readable(&self) -> bool {
        false
    }
    fn serialize_bool(self, v: bool) -> Done {
        self.serialize_u8(u8::from(v))
    }
    fn serialize_u8(self, v: u8) -> Done {
        self.0.push(v);
        Ok(())
    }
    fn serialize_str(self, v: &str) -> Done {
        self.serialize_bytes(v.as_bytes())
    }
    fn serialize_bytes(self, v: &[u8]) -> Done {
        self.count(v.len());
        self.0.extend(v);
        Ok(())
    }
    fn serialize_none(self) -> Done {
        self.serialize_u8(0)
    }
    fn serialize_some<T: Serialize + ?Sized>(self, value: &T) -> Done {
        self.0.push(1);
        value.serialize(self)
    }
    fn serialize_unit(self) -> Done {
        Ok(())
    }
    fn serialize_unit_struct(self, _: &'static str) -> Done {
        Ok(())
    }
    fn serialize_unit_variant(self, _: &'static str, which: u32, _: &'static str) -> Done {
        self.count(which as usize);
        Ok(())
    }
    fn serialize_newtype_struct<T: Serialize + ?Sized>(self, _: &'static str, value: &T) -> Done {
        value.serialize(self)
    }
    fn serialize_newtype_variant<T: Serialize + ?Sized>(
        self,
        _: &'static str,
        which: u32,
        _: &'static str,
        value: &T,
    ) -> Done {
        self.count(which as usize);
        value.serialize(self)
    }
    fn serialize_seq(self, len: Option<usize>) -> Result<Self, Broken> {
        let len = len.ok_or_else(|| Broken("a list of unknown length".to_owned()))?;
        self.count(len);
        Ok(self)
    }
    fn serialize_tuple(self, _: usize) -> Result<Self, Broken> {
        Ok(self)
    }
    fn serialize_tuple_struct(self, _: &'static str, _: usize) -> Result<Self, Broken> {
        Ok(self)
    }
    fn serialize_tuple_variant(
        self,
        _: &'static str,
        which: u32,
        _: &'static str,
        _: usize,
    ) -> Result<Self, Broken> {
        self.count(which as usize);
        Ok(self)
    }
    fn serialize_map(self, len: Option<usize>) -> Result<Self, Broken> {
        self.serialize_seq(len)
    }
    fn serialize_struct(self, _: &'static str, _: usize) -> Result<Self, Broken> {
        Ok(self)
    }
    fn serialize_struct_variant(
        self,
        _: &'static str,
        which: u32,
        _: &'static str,
        _: usize,
    ) -> Result<Self, Broken> {
        self.count(which as usize);
        Ok(self)
    }
}

macro_rules! parts {
    ($($trait:ident::$method:ident($($name:ident)?);)*) => {
        $(impl ser::$trait for &mut Packer {
            type Ok = ();
            type Error = Broken;
            fn $method<T: Serialize + ?Sized>(&mut self, $($name: &'static str,)? value: &T) -> Done {
                value.serialize(&mut **self)
            }
            fn end(self) -> Done {
                Ok(())
            }
            $(
                /// Only an absent option or a `false` is skipped: either is packed as it would be if it were there, as a 0.
                fn skip_field(&mut self, $name: &'static str) -> Done {
                    self.0.push(0);
                    Ok(())
                }
            )?
        })*
    };
}

parts! {
    SerializeSeq::serialize_element();
    SerializeTuple::serialize_element();
    SerializeTupleStruct::serialize_field();
    SerializeTupleVariant::serialize_field();
    SerializeStruct::serialize_field(_name);
    SerializeStructVariant::serialize_field(_name);
}

impl ser::SerializeMap for &mut Packer {
    type Ok = ();
    type Error = Broken;
    fn serialize_key<T: Serialize + ?Sized>(&mut self, key: &T) -> Done {
        key.serialize(&mut **self)
    }
    fn serialize_value<T: Serialize + ?Sized>(&mut self, value: &T) -> Done {
        value.serialize(&mut **self)
    }
    fn end(self) -> Done {
        Ok(())
    }
}
