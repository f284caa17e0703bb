//! The whole simulated heater and its connections, as one value that can be cloned, stored and compared.

use quantity::{Seconds, Temperature};
use serde::{Deserialize, Serialize};

use crate::controls::board::Board;
use crate::heater::Plate;
use crate::parts::{Element, Limit, Thermostat, Wiring};
use crate::supply::{Panel, Service};
use crate::waterworks::{Plumbing, Vessel};

/// Everything physical. State only: nothing here is scratch, and nothing here knows why it is so.
#[derive(Clone, PartialEq, Debug, Serialize, Deserialize)]
pub struct Plant {
    /// The rating plate.
    pub plate: Plate,
    /// The utility's side.
    pub service: Service,
    /// The load center.
    pub panel: Panel,
    /// The box between breaker and heater, where there is one.
    pub in_line: Option<crate::InLineBox>,
    /// The utility's relay between the breaker of an off-peak circuit and its cable.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub off_peak: Option<crate::InLineBox>,
    /// Wires and their joints.
    pub wiring: Wiring,
    /// Upper and lower element.
    pub elements: [Element; 2],
    /// Upper and lower thermostat.
    pub thermostats: [Thermostat; 2],
    /// The high limit.
    pub limit: Limit,
    /// The limit of the off-peak circuit, H5 to H8.
    pub lower_limit: Option<Limit>,
    /// The board of an electronic heater. Its zones' dials, sensor bodies and relay contacts are those of the
    /// thermostats.
    pub board: Option<Board>,
    /// Insulation lies over the upper and the lower control: without it they feel the room.
    pub insulated: [bool; 2],
    /// Water that may bridge a live screw of the upper, of the lower compartment to the shell.
    #[serde(default)]
    pub films: [crate::Film; 2],
    /// How far the branch cable runs beside a live wire of leg 1; what makes ghost volts.
    pub beside_live: quantity::Metres,
    /// The tank beyond its water.
    pub vessel: Vessel,
    /// The water in it, layer by layer.
    pub tank: solver::tank::State,
    /// Valves, taps and pressures.
    pub plumbing: Plumbing,
    /// Air around the heater.
    pub room: Temperature,
    /// Simulated time since this plant was made.
    pub clock: Seconds,
}

/// Something that happened by itself while time passed. Whether anybody noticed is the bench's business.
#[derive(Clone, PartialEq, Debug, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Happening {
    /// A breaker tripped.
    BreakerTripped {
        /// Its slot.
        slot: u32,
    },
    /// The high limit tripped.
    LimitTripped {
        /// Water beside it.
        water: Temperature,
    },
    /// A thermostat changed over.
    Switched {
        /// Which one.
        level: crate::Level,
        /// It calls now.
        calling: bool,
    },
    /// An element burnt out in air.
    ElementBurntOut {
        /// Which one.
        level: crate::Level,
        /// Seconds from power to failure.
        after: Seconds,
    },
    /// An element's coil broke, its life in the water used up.
    ElementWornOut {
        /// Which one.
        level: crate::Level,
    },
    /// A contact of a thermostat or of the limit welded shut.
    ContactWelded {
        /// Which one.
        at: crate::ContactAt,
    },
    /// A contact burnt away.
    ContactBurnt {
        /// Which one.
        at: crate::ContactAt,
    },
    /// A fuse of the box in the line melted.
    FuseMelted {
        /// Its leg: 0 for leg 1, 1 for leg 2.
        leg: u32,
    },
    /// A timer or the utility's relay moved its contacts.
    LineSwitched {
        /// They are closed now.
        closed: bool,
    },
    /// A loose joint opened by its own heat.
    JointBurnt {
        /// Which wire end.
        end: crate::End,
    },
    /// The relief valve opened.
    ReliefOpened,
    /// The relief valve closed again.
    ReliefClosed,
    /// Nothing flows from the drain any more though water is left: no air gets in.
    DrainHeldByVacuum,
    /// The tank is empty.
    TankEmpty,
    /// The tank is full to the top.
    TankFull,
}
