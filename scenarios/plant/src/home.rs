//! A house: the heater with its connections, the people who use it, the place it stands in.

use serde::{Deserialize, Serialize};

use crate::climate::Climate;
use crate::household::HouseholdKind;
use crate::location::Location;
use crate::{BoxKind, HeaterModel, Plant};

/// What a drill chooses before any fault: equipment, people, place, day.
#[derive(Clone, Copy, PartialEq, Eq, Debug, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Setting {
    /// The heater.
    pub heater: HeaterModel,
    /// The people.
    pub household: HouseholdKind,
    /// The place.
    pub climate: Climate,
    /// Day of the year, 1 to 365.
    pub day: u16,
    /// What stands in the line between breaker and heater, where anything does.
    #[serde(default)]
    pub in_line: Option<BoxKind>,
    /// Where in the house the heater stands.
    #[serde(default)]
    pub location: Location,
}

/// A house at one moment.
#[derive(Clone, PartialEq, Debug, Serialize, Deserialize)]
pub struct Home {
    /// What was chosen.
    pub setting: Setting,
    /// The physical side.
    pub plant: Plant,
    /// How the heater was put in.
    #[serde(default)]
    pub installation: crate::Installation,
    /// How much more hot water the people use than their house was fitted for: 1 as fitted.
    pub demand: f64,
    /// Days that nobody was at home before the call; they came home an hour ago.
    #[serde(default)]
    pub away: u16,
}
