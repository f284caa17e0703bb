//! How a heater was put in, beyond what makes it heat: what a careful eye writes down, and traces of old troubles that
//! mean nothing today.

use quantity::{Constant, Draw, Tag};
use serde::{Deserialize, Serialize};

use crate::heater::Rating;
use crate::location::Location;
use crate::named::named;
use crate::parts::Level;

named! {
    /// The pipe on the relief valve's outlet.
    #[derive(Default)]
    Discharge {
        /// Of metal, falling all the way, open above the floor.
        #[default]
        Metal = "metal",
        /// Of a plastic that hot water softens.
        Plastic = "plastic",
        /// With a stretch that rises: water stands in it.
        Uphill = "uphill",
        /// With a cap on its end.
        Capped = "capped",
    }
}

quantity::constants! {
    /// Shares of houses with a plastic pipe, with one that rises.
    const DISCHARGES: Constant<[f64; 2]> =
        Constant::new("houses whose discharge pipe is plastic, rises", [0.05, 0.04], "", Tag::Invented("some streets"));
    /// Share of houses without dielectric fittings.
    const BARE_UNIONS: Constant =
        Constant::new("houses without dielectric fittings", 0.06, "", Tag::Invented("some streets"));
    /// Share of attics whose heater stands in no pan.
    const NO_PAN: Constant = Constant::new("attic heaters without a pan", 0.15, "", Tag::Invented("older houses"));
    /// Shares of houses with an old streak of rust, old soot, a crust of lime.
    const TRACES: Constant<[f64; 3]> = Constant::new(
        "houses with an old streak of rust, old soot, a crust of lime",
        [0.12, 0.08, 0.10],
        "",
        Tag::Invented("heaters that have had their troubles"),
    );
    /// Share of houses whose air handler drips beside the heater.
    const CONDENSATE: Constant = Constant::new(
        "houses whose condensate line ends beside the heater",
        0.10,
        "",
        Tag::Invented("both look for the same floor drain"),
    );
    /// Upper or lower alike.
    const EVEN: Constant = Constant::new("upper or lower", 0.5, "", Tag::Invented("no preference"));
}

/// What an eye finds at a heater that has no part in its working, or none that anybody calls for.
#[derive(Clone, Copy, PartialEq, Debug, Serialize, Deserialize)]
pub struct Installation {
    /// The relief valve's pipe.
    pub discharge: Discharge,
    /// Dielectric fittings between steel and copper.
    pub dielectric: bool,
    /// A pan with a drain under it, where a leak would do harm below.
    pub pan: bool,
    /// A dry streak of rust down the jacket, from a leak long mended.
    pub streak: bool,
    /// Old soot behind a cover, from a joint long made again.
    pub soot: Option<Level>,
    /// A dry crust of lime at the end of the discharge pipe.
    pub lime: bool,
    /// The house's air handler drips beside the heater, out of a line of its own: water from the air, cold whatever the
    /// heater does.
    #[serde(default, skip_serializing_if = "std::ops::Not::not")]
    pub condensate: bool,
    /// A piece of wire lies across each pole of the limit.
    #[serde(default, skip_serializing_if = "std::ops::Not::not")]
    pub bridged: bool,
    /// An element of another rating than the plate's, and what its stamp says.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub other_element: Option<(Level, Rating)>,
}

impl Default for Installation {
    fn default() -> Self {
        Self {
            discharge: Discharge::Metal,
            dielectric: true,
            pan: true,
            streak: false,
            soot: None,
            lime: false,
            condensate: false,
            bridged: false,
            other_element: None,
        }
    }
}

impl Installation {
    /// As chance gives it to a house. It knows nothing of the fault, and tells nothing of it.
    pub fn drawn(draw: &mut Draw, location: Location) -> Self {
        let [plastic, uphill] = DISCHARGES.get();
        let pipe = draw.unit();
        let discharge = match () {
            () if pipe < plastic => Discharge::Plastic,
            () if pipe < plastic + uphill => Discharge::Uphill,
            () => Discharge::Metal,
        };
        let dielectric = !draw.chance(BARE_UNIONS.get());
        let pan = !draw.chance(NO_PAN.get()) || location != Location::Attic;
        let [streak, soot, lime] = TRACES.get();
        let level = if draw.chance(EVEN.get()) { Level::Upper } else { Level::Lower };
        Self {
            discharge,
            dielectric,
            pan,
            streak: draw.chance(streak),
            soot: draw.chance(soot).then_some(level),
            lime: draw.chance(lime),
            condensate: draw.chance(CONDENSATE.get()),
            ..Self::default()
        }
    }
}
