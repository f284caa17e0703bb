//! How a heater is wired: which wires, screws and parts there are.

use crate::named::named;
use crate::parts::Level;
use crate::points::Screw;
use crate::wire::Wire;

named! {
    /// The way the parts of a heater are wired together.
    Layout {
        /// Two elements of which one runs at a time: the lower one is fed through the upper thermostat.
        NonSimultaneous = "non-simultaneous",
        /// Two elements that may run together: the lower thermostat is fed from the limit (trade sheet 1.10).
        Simultaneous = "simultaneous",
        /// The lower element on a second, off-peak circuit with a limit of its own, interlocked through the
        /// upper thermostat (trade sheet 1.11).
        OffPeak = "off-peak",
        /// One element with its thermostat and limit (trade sheet 1.9).
        SingleElement = "single-element",
        /// Two elements switched by the relays of a board that reads two sensors (trade sheet 1.12).
        Electronic = "electronic",
    }
}

impl Layout {
    /// Whether it has an element, a control and a compartment there.
    pub const fn has(self, level: Level) -> bool {
        !matches!((self, level), (Self::SingleElement, Level::Lower))
    }

    /// Whether snap thermostats switch its elements.
    pub const fn has_thermostats(self) -> bool {
        !matches!(self, Self::Electronic)
    }

    /// Whether the lower element waits until the upper thermostat has changed over.
    pub const fn transfers(self) -> bool {
        matches!(self, Self::NonSimultaneous | Self::OffPeak)
    }

    /// How many elements may draw current at once.
    pub const fn at_once(self) -> u8 {
        match self {
            Self::Simultaneous => 2,
            Self::NonSimultaneous | Self::OffPeak | Self::SingleElement | Self::Electronic => 1,
        }
    }

    /// Whether a lead inside the jacket belongs to it. Cables belong to the house.
    pub const fn has_lead(self, wire: Wire) -> bool {
        match wire {
            Wire::FeedA | Wire::FeedB | Wire::Bond | Wire::UpperPermanent => true,
            Wire::Strap | Wire::UpperSwitched => self.has_thermostats(),
            Wire::Transfer => self.transfers(),
            Wire::LowerFeed => matches!(self, Self::Simultaneous),
            Wire::LowerSwitched => self.has_thermostats() && self.has(Level::Lower),
            Wire::LowerPermanent => {
                matches!(self, Self::NonSimultaneous | Self::Simultaneous | Self::Electronic)
            }
            Wire::OffPeakFeedA | Wire::OffPeakFeedB | Wire::Interlock | Wire::OffPeakPermanent => {
                matches!(self, Self::OffPeak)
            }
            Wire::BoardLine | Wire::BoardReturn | Wire::BoardUpper | Wire::BoardLower => {
                matches!(self, Self::Electronic)
            }
            _ => false,
        }
    }

    /// Whether a screw of the heater belongs to it.
    pub const fn has_screw(self, screw: Screw) -> bool {
        match screw {
            Screw::Jc | Screw::Jd | Screw::H5 | Screw::H6 | Screw::H7 | Screw::H8 | Screw::U3 => {
                matches!(self, Self::OffPeak)
            }
            Screw::U1 | Screw::U2 => self.has_thermostats(),
            Screw::U4 | Screw::D1 | Screw::D2 => self.has_thermostats() && self.has(Level::Lower),
            Screw::LEa | Screw::LEb => self.has(Level::Lower),
            Screw::K1 | Screw::K2 | Screw::K3 | Screw::K4 | Screw::T1 | Screw::T2 | Screw::T3 | Screw::T4 => {
                matches!(self, Self::Electronic)
            }
            _ => true,
        }
    }
}
