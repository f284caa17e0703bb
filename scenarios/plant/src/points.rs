//! Named places of the wiring: screws, wires and their ends.
//!
//! Screw names are those of the trade sheet, section 1: H1 to H4 on the limit, U1 U2 U4 on the upper
//! thermostat, D1 D2 on the lower one, UEa UEb LEa LEb on the elements (a switched, b permanent).

use std::fmt;
use std::str::FromStr;

use serde::{Deserialize, Serialize};

use crate::named::{QUOTED, UnknownName, named};
use crate::wire::Wire;

named! {
    /// A screw, splice, lug or piece of bare metal that a wire can be landed on or a lead set on.
    Screw {
        /// Bus behind the breakers, leg 1.
        M1 = "M1",
        /// Bus behind the breakers, leg 2.
        M2 = "M2",
        /// Neutral bar of the load center.
        N = "N",
        /// Ground bar of the load center.
        G = "G",
        /// Load screw, pole 1, of the breaker that feeds the heater.
        B1 = "B1",
        /// Load screw, pole 2, of the breaker that feeds the heater.
        B2 = "B2",
        /// Load screw, pole 1, of a second breaker that also feeds the heater, where there is one.
        S1 = "S1",
        /// Load screw, pole 2, of that second breaker.
        S2 = "S2",
        /// Line screw, leg 1, of the box between breaker and heater, where there is one.
        X1 = "X1",
        /// Line screw, leg 2, of that box.
        X2 = "X2",
        /// Load screw, leg 1, of that box.
        X3 = "X3",
        /// Load screw, leg 2, of that box.
        X4 = "X4",
        /// Splice of leg 1 in the heater's junction box.
        Ja = "JA",
        /// Splice of leg 2 in the heater's junction box.
        Jb = "JB",
        /// Splice of leg 1 of the off-peak circuit, where there is one.
        Jc = "JC",
        /// Splice of leg 2 of the off-peak circuit.
        Jd = "JD",
        /// Ground screw of the heater's junction box.
        Jg = "JG",
        /// Limit, line screw of leg 1.
        H1 = "H1",
        /// Limit, load screw of leg 1.
        H2 = "H2",
        /// Limit, line screw of leg 2.
        H3 = "H3",
        /// Limit, load screw of leg 2.
        H4 = "H4",
        /// Lower limit of an off-peak heater, line screw of leg 1.
        H5 = "H5",
        /// Lower limit, load screw of leg 1.
        H6 = "H6",
        /// Lower limit, line screw of leg 2.
        H7 = "H7",
        /// Lower limit, load screw of leg 2.
        H8 = "H8",
        /// Upper thermostat, common.
        U1 = "U1",
        /// Upper thermostat, contact made while the top is cold.
        U2 = "U2",
        /// Upper thermostat, line of an interlock contact of its own (off-peak).
        U3 = "U3",
        /// Upper thermostat, contact made once the top is hot.
        U4 = "U4",
        /// Lower thermostat, line.
        D1 = "D1",
        /// Lower thermostat, load.
        D2 = "D2",
        /// Upper element, switched screw.
        UEa = "UEa",
        /// Upper element, permanently connected screw.
        UEb = "UEb",
        /// Lower element, switched screw.
        LEa = "LEa",
        /// Lower element, permanently connected screw.
        LEb = "LEb",
        /// Control board, line.
        K1 = "K1",
        /// Control board, return.
        K2 = "K2",
        /// Control board, relay output to the upper element.
        K3 = "K3",
        /// Control board, relay output to the lower element.
        K4 = "K4",
        /// Plug of the upper sensor, first pin.
        T1 = "T1",
        /// Plug of the upper sensor, second pin.
        T2 = "T2",
        /// Plug of the lower sensor, first pin.
        T3 = "T3",
        /// Plug of the lower sensor, second pin.
        T4 = "T4",
        /// Bare metal of the tank.
        Shell = "shell",
        /// Bare metal of the cold water pipe, bonded at the service.
        Pipe = "pipe",
    }
}

impl Screw {
    /// Its place in `Screw::ALL` and in every table by screw.
    pub const fn index(self) -> usize {
        self as usize
    }

    /// Where it is found.
    pub const fn place(self) -> Place {
        match self {
            Self::M1 | Self::M2 | Self::N | Self::G | Self::B1 | Self::B2 | Self::S1 | Self::S2 => {
                Place::LoadCenter
            }
            Self::X1 | Self::X2 | Self::X3 | Self::X4 => Place::InLineBox,
            Self::Ja | Self::Jb | Self::Jc | Self::Jd | Self::Jg => Place::JunctionBox,
            Self::H1
            | Self::H2
            | Self::H3
            | Self::H4
            | Self::U1
            | Self::U2
            | Self::U3
            | Self::U4
            | Self::K1
            | Self::K2
            | Self::K3
            | Self::K4
            | Self::T1
            | Self::T2
            | Self::T3
            | Self::T4
            | Self::UEa
            | Self::UEb => Place::UpperCompartment,
            Self::D1 | Self::D2 | Self::H5 | Self::H6 | Self::H7 | Self::H8 | Self::LEa | Self::LEb => {
                Place::LowerCompartment
            }
            Self::Shell | Self::Pipe => Place::HeaterTop,
        }
    }
}

named! {
    /// Where something is found or done.
    Place {
        /// The customer.
        Customer = "customer",
        /// Load center with its breakers.
        LoadCenter = "load-center",
        /// Box in the line between breaker and heater: switch, timer or relay.
        InLineBox = "in-line-box",
        /// Junction box on top of the heater.
        JunctionBox = "junction-box",
        /// Top of the heater: nipples, cold valve, bare metal.
        HeaterTop = "heater-top",
        /// Behind the upper cover.
        UpperCompartment = "upper-compartment",
        /// Behind the lower cover.
        LowerCompartment = "lower-compartment",
        /// Relief valve and its pipe.
        Relief = "relief",
        /// Drain valve and the floor around the heater.
        Drain = "drain",
        /// Taps of the house.
        Taps = "taps",
        /// The van with its parts.
        Van = "van",
    }
}

/// One of a wire's two ends, in the order of `Wire::home`.
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Debug)]
pub struct End {
    /// The wire.
    pub wire: Wire,
    /// 0 for the end nearer the source, 1 for the other.
    pub side: u8,
}

impl End {
    /// The screw this end belongs on.
    pub const fn home(self) -> Screw {
        self.wire.home()[(self.side & 1) as usize]
    }

    /// Every end there is.
    pub fn all() -> impl Iterator<Item = Self> {
        Wire::ALL.iter().flat_map(|&wire| [Self { wire, side: 0 }, Self { wire, side: 1 }])
    }
}

impl fmt::Display for End {
    /// Written `feed-a@H1`: the wire and the screw this end belongs on.
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "{}@{}", self.wire, self.home())
    }
}

impl FromStr for End {
    type Err = UnknownName;
    fn from_str(text: &str) -> Result<Self, UnknownName> {
        let unknown = || UnknownName { kind: "wire end", text: text.chars().take(QUOTED.get()).collect() };
        let (wire, screw) = text.split_once('@').ok_or_else(unknown)?;
        let (wire, screw): (Wire, Screw) = (wire.parse()?, screw.parse()?);
        let side = wire.home().iter().position(|&home| home == screw).ok_or_else(unknown)?;
        Ok(Self { wire, side: side as u8 })
    }
}

/// What a meter lead or a hand can be set on: a screw, or the bare end of a wire (lifted or landed).
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Debug)]
pub enum Point {
    /// A screw, splice or bare metal.
    Screw(Screw),
    /// The bare end of a wire.
    End(End),
}

impl Point {
    /// Where it is found.
    pub const fn place(self) -> Place {
        match self {
            Self::Screw(screw) => screw.place(),
            Self::End(end) => end.home().place(),
        }
    }
}

impl From<Screw> for Point {
    fn from(screw: Screw) -> Self {
        Self::Screw(screw)
    }
}

impl From<End> for Point {
    fn from(end: End) -> Self {
        Self::End(end)
    }
}

impl fmt::Display for Point {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::Screw(screw) => screw.fmt(f),
            Self::End(end) => end.fmt(f),
        }
    }
}

impl FromStr for Point {
    type Err = UnknownName;
    fn from_str(text: &str) -> Result<Self, UnknownName> {
        if text.contains('@') { text.parse().map(Self::End) } else { text.parse().map(Self::Screw) }
    }
}

macro_rules! serde_by_text {
    ($name:ident) => {
        impl Serialize for $name {
            fn serialize<S: serde::Serializer>(&self, s: S) -> Result<S::Ok, S::Error> {
                s.collect_str(self)
            }
        }
        impl<'de> Deserialize<'de> for $name {
            fn deserialize<D: serde::Deserializer<'de>>(d: D) -> Result<Self, D::Error> {
                String::deserialize(d)?.parse().map_err(serde::de::Error::custom)
            }
        }
    };
}
serde_by_text!(End);
serde_by_text!(Point);

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_name_reads_back() {
        Screw::ALL.iter().for_each(|s| assert_eq!(s.name().parse(), Ok(*s)));
        End::all().for_each(|e| assert_eq!(e.to_string().parse(), Ok(e)));
        assert!("feed-a@H3".parse::<End>().is_err());
        assert!("<script>".parse::<Point>().is_err());
    }
}
