//! Values from the bytes that `pack` made.

use serde::de::{
    self, DeserializeOwned, DeserializeSeed, Deserializer, EnumAccess, IntoDeserializer, MapAccess,
    SeqAccess, VariantAccess, Visitor,
};

use super::pack::Broken;

/// The value of some bytes; all of them have to be its own.
pub fn unpack<T: DeserializeOwned>(bytes: &[u8]) -> Result<T, Broken> {
    let mut left = Unpacker(bytes);
    let value = T::deserialize(&mut left)?;
    if left.0.is_empty() { Ok(value) } else { Err(too_short()) }
}

fn too_short() -> Broken {
    Broken("the bytes do not fit the value".to_owned())
}

struct Unpacker<'de>(&'de [u8]);

impl<'de> Unpacker<'de> {
    fn bytes(&mut self, count: usize) -> Result<&'de [u8], Broken> {
        let (taken, left) = self.0.split_at_checked(count).ok_or_else(too_short)?;
        self.0 = left;
        Ok(taken)
    }

    fn array<const N: usize>(&mut self) -> Result<[u8; N], Broken> {
        self.bytes(N)?.try_into().map_err(|_| too_short())
    }

    fn byte(&mut self) -> Result<u8, Broken> {
        Ok(u8::from_le_bytes(self.array()?))
    }

    fn number(&mut self) -> Result<u64, Broken> {
        Ok(u64::from_le_bytes(self.array()?))
    }

    fn count(&mut self) -> Result<u32, Broken> {
        Ok(u32::from_le_bytes(self.array()?))
    }

    fn text(&mut self) -> Result<&'de str, Broken> {
        let count = self.count()?;
        std::str::from_utf8(self.bytes(count as usize)?).map_err(|_| too_short())
    }
}

macro_rules! numbers {
    ($($method:ident => $visit:ident($type:ty);)*) => {
        $(fn $method<V: Visitor<'de>>(self, visitor: V) -> Result<V::Value, Broken> {
            visitor.$visit(self.number()? as $type)
        })*
    };
}

impl<'de> Deserializer<'de> for &mut Unpacker<'de> {
    type Error = Broken;

    numbers! {
        deserialize_i8 => visit_i8(i8);
        deserialize_i16 => visit_i16(i16);
        deserialize_i32 => visit_i32(i32);
        deserialize_i64 => visit_i64(i64);
        deserialize_u16 => visit_u16(u16);
        deserialize_u32 => visit_u32(u32);
        deserialize_u64 => visit_u64(u64);
    }

    fn is_human_readable(&self) -> bool {
        false
    }
    fn deserialize_any<V: Visitor<'de>>(self, _: V) -> Result<V::Value, Broken> {
        Err(Broken("packed bytes do not say what they are".to_owned()))
    }
    fn deserialize_ignored_any<V: Visitor<'de>>(self, visitor: V) -> Result<V::Value, Broken> {
        self.deserialize_any(visitor)
    }
    fn deserialize_bool<V: Visitor<'de>>(self, visitor: V) -> Result<V::Value, Broken> {
        visitor.visit_bool(self.byte()? != 0)
    }
    fn deserialize_u8<V: Visitor<'de>>(self, visitor: V) -> Result<V::Value, Broken> {
        visitor.visit_u8(self.byte()?)
    }
    fn deserialize_f32<V: Visitor<'de>>(self, visitor: V) -> Result<V::Value, Broken> {
        visitor.visit_f32(f64::from_bits(self.number()?) as f32)
    }
    fn deserialize_f64<V: Visitor<'de>>(self, visitor: V) -> Result<V::Value, Broken> {
        visitor.visit_f64(f64::from_bits(self.number()?))
    }
    fn deserialize_char<V: Visitor<'de>>(self, visitor: V) -> Result<V::Value, Broken> {
        let code = u32::try_from(self.number()?).ok().and_then(char::from_u32);
        visitor.visit_char(code.ok_or_else(too_short)?)
    }
    fn deserialize_str<V: Visitor<'de>>(self, visitor: V) -> Result<V::Value, Broken> {
        visitor.visit_borrowed_str(self.text()?)
    }
    fn deserialize_string<V: Visitor<'de>>(self, visitor: V) -> Result<V::Value, Broken> {
        self.deserialize_str(visitor)
    }
    fn deserialize_identifier<V: Visitor<'de>>(self, visitor: V) -> Result<V::Value, Broken> {
        self.deserialize_any(visitor)
    }
    fn deserialize_bytes<V: Visitor<'de>>(self, visitor: V) -> Result<V::Value, Broken> {
        let count = self.count()?;
        visitor.visit_borrowed_bytes(self.bytes(count as usize)?)
    }
    fn deserialize_byte_buf<V: Visitor<'de>>(self, visitor: V) -> Result<V::Value, Broken> {
        self.deserialize_bytes(visitor)
    }
    fn deserialize_option<V: Visitor<'de>>(self, visitor: V) -> Result<V::Value, Broken> {
        if self.byte()? == 0 { visitor.visit_none() } else { visitor.visit_some(self) }
    }
    fn deserialize_unit<V: Visitor<'de>>(self, visitor: V) -> Result<V::Value, Broken> {
        visitor.visit_unit()
    }
    fn deserialize_unit_struct<V: Visitor<'de>>(
        self,
        _: &'static str,
        visitor: V,
    ) -> Result<V::Value, Broken> {
        visitor.visit_unit()
    }
    fn deserialize_newtype_struct<V: Visitor<'de>>(
        self,
        _: &'static str,
        visitor: V,
    ) -> Result<V::Value, Broken> {
        visitor.visit_newtype_struct(self)
    }
    fn deserialize_seq<V: Visitor<'de>>(self, visitor: V) -> Result<V::Value, Broken> {
        let left = self.count()? as usize;
        visitor.visit_seq(Parts { from: self, left })
    }
    fn deserialize_tuple<V: Visitor<'de>>(self, left: usize, visitor: V) -> Result<V::Value, Broken> {
        visitor.visit_seq(Parts { from: self, left })
    }
    fn deserialize_tuple_struct<V: Visitor<'de>>(
        self,
        _: &'static str,
        left: usize,
        visitor: V,
    ) -> Result<V::Value, Broken> {
        self.deserialize_tuple(left, visitor)
    }
    fn deserialize_map<V: Visitor<'de>>(self, visitor: V) -> Result<V::Value, Broken> {
        let left = self.count()? as usize;
        visitor.visit_map(Parts { from: self, left })
    }
    fn deserialize_struct<V: Visitor<'de>>(
        self,
        _: &'static str,
        fields: &'static [&'static str],
        visitor: V,
    ) -> Result<V::Value, Broken> {
        self.deserialize_tuple(fields.len(), visitor)
    }
    fn deserialize_enum<V: Visitor<'de>>(
        self,
        _: &'static str,
        _: &'static [&'static str],
        visitor: V,
    ) -> Result<V::Value, Broken> {
        visitor.visit_enum(self)
    }
}

struct Parts<'a, 'de> {
    from: &'a mut Unpacker<'de>,
    left: usize,
}

impl<'de> Parts<'_, 'de> {
    fn next<T: DeserializeSeed<'de>>(&mut self, seed: T) -> Result<Option<T::Value>, Broken> {
        let Some(left) = self.left.checked_sub(1) else { return Ok(None) };
        self.left = left;
        seed.deserialize(&mut *self.from).map(Some)
    }
}

impl<'de> SeqAccess<'de> for Parts<'_, 'de> {
    type Error = Broken;
    fn next_element_seed<T: DeserializeSeed<'de>>(&mut self, seed: T) -> Result<Option<T::Value>, Broken> {
        self.next(seed)
    }
}

impl<'de> MapAccess<'de> for Parts<'_, 'de> {
    type Error = Broken;
    fn next_key_seed<T: DeserializeSeed<'de>>(&mut self, seed: T) -> Result<Option<T::Value>, Broken> {
        self.next(seed)
    }
    fn next_value_seed<T: DeserializeSeed<'de>>(&mut self, seed: T) -> Result<T::Value, Broken> {
        seed.deserialize(&mut *self.from)
    }
}

impl<'de> EnumAccess<'de> for &mut Unpacker<'de> {
    type Error = Broken;
    type Variant = Self;
    fn variant_seed<T: DeserializeSeed<'de>>(self, seed: T) -> Result<(T::Value, Self), Broken> {
        let which = self.count()?;
        let which: de::value::U32Deserializer<Broken> = which.into_deserializer();
        Ok((seed.deserialize(which)?, self))
    }
}

impl<'de> VariantAccess<'de> for &mut Unpacker<'de> {
    type Error = Broken;
    fn unit_variant(self) -> Result<(), Broken> {
        Ok(())
    }
    fn newtype_variant_seed<T: DeserializeSeed<'de>>(self, seed: T) -> Result<T::Value, Broken> {
        seed.deserialize(self)
    }
    fn tuple_variant<V: Visitor<'de>>(self, len: usize, visitor: V) -> Result<V::Value, Broken> {
        self.deserialize_tuple(len, visitor)
    }
    fn struct_variant<V: Visitor<'de>>(
        self,
        fields: &'static [&'static str],
        visitor: V,
    ) -> Result<V::Value, Broken> {
        self.deserialize_tuple(fields.len(), visitor)
    }
}
