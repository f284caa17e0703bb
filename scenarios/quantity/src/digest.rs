//! Digests of bytes, and a chain of them that tells an edited record from a cut one.

use sha2::{Digest as _, Sha256};

/// First 16 bytes of SHA-256, written as 32 lower-case hexadecimal characters.
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Debug)]
pub struct Digest(pub [u8; 16]);

impl Digest {
    /// Digest of some bytes.
    pub fn of(bytes: &[u8]) -> Self {
        let full = Sha256::digest(bytes);
        let mut short = [0; 16];
        short.copy_from_slice(&full[..16]);
        Self(short)
    }

    /// Reads the 32 hexadecimal characters that `Display` writes; `None` for anything else.
    pub fn parse(text: &str) -> Option<Self> {
        let raw = text.as_bytes();
        if raw.len() != 32 || !raw.iter().all(|c| c.is_ascii_hexdigit()) {
            return None;
        }
        let mut out = [0; 16];
        for (i, byte) in out.iter_mut().enumerate() {
            *byte = u8::from_str_radix(text.get(2 * i..2 * i + 2)?, 16).ok()?;
        }
        Some(Self(out))
    }
}

impl std::fmt::Display for Digest {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        self.0.iter().try_for_each(|b| write!(f, "{b:02x}"))
    }
}

impl serde::Serialize for Digest {
    fn serialize<S: serde::Serializer>(&self, s: S) -> Result<S::Ok, S::Error> {
        s.collect_str(self)
    }
}

impl<'de> serde::Deserialize<'de> for Digest {
    fn deserialize<D: serde::Deserializer<'de>>(d: D) -> Result<Self, D::Error> {
        let text = String::deserialize(d)?;
        Self::parse(&text).ok_or_else(|| serde::de::Error::custom("no digest: 32 hexadecimal characters"))
    }
}

/// A running chain: each link is the digest of the link before it and the next bytes.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub struct Chain(Digest);

impl Chain {
    /// Starts a chain from the bytes that name what it belongs to.
    pub fn start(bytes: &[u8]) -> Self {
        Self(Digest::of(bytes))
    }

    /// Adds the next bytes.
    #[must_use]
    pub fn then(self, bytes: &[u8]) -> Self {
        let mut all = self.0.0.to_vec();
        all.extend_from_slice(bytes);
        Self(Digest::of(&all))
    }

    /// The link reached.
    pub fn link(self) -> Digest {
        self.0
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn digest_is_sha_256() {
        // FIPS 180-4, example "abc".
        assert_eq!(Digest::of(b"abc").to_string(), "ba7816bf8f01cfea414140de5dae2223");
    }

    #[test]
    fn text_round_trips_and_rejects_others() {
        let d = Digest::of(b"x");
        assert_eq!(Digest::parse(&d.to_string()), Some(d));
        assert_eq!(Digest::parse("é234567890123456789012345678901"), None);
    }

    #[test]
    fn order_matters() {
        let a = Chain::start(b"d").then(b"1").then(b"2").link();
        let b = Chain::start(b"d").then(b"2").then(b"1").link();
        assert_ne!(a, b);
    }
}
