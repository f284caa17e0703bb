//! The heater as its rating plate describes it, and the models there are.

use quantity::{Amps, Constant, Metres, Ohms, Pressure, Tag, Volts, Volume, Watts};
use serde::{Deserialize, Serialize};

use crate::layout::Layout;
use crate::named::named;
use crate::parts::{Element, ElementLength, Level, Mount};
use crate::supply::ServiceKind;

named! {
    /// The heaters of the practice yard. Invented; sizes and ratings are those of the trade.
    HeaterModel {
        /// 30 gallons, short, 3500 W at 240 V.
        Short30 = "short-30",
        /// 40 gallons, 4500 W at 240 V.
        Plain40 = "plain-40",
        /// 50 gallons, tall, 4500 W at 208 V.
        Tall50At208 = "tall-50-208",
        /// 80 gallons, 5500 W at 240 V.
        Wide80 = "wide-80",
        /// 20 gallons, one element, 1500 W at 120 V.
        Small20 = "small-20",
        /// 50 gallons, 4500 W at 277 V.
        Tall50At277 = "tall-50-277",
        /// 50 gallons, both elements at once, 4500 W each at 240 V.
        Both50 = "both-50",
        /// 80 gallons, lower element off-peak, 4500 W at 240 V.
        OffPeak80 = "off-peak-80",
        /// 50 gallons, electronic control, 4500 W at 240 V.
        Board50 = "board-50",
        /// 120 gallons, 5500 W at 240 V.
        Large120 = "large-120",
    }
}

/// A rated power at a rated voltage, as stamped on a plate or an element.
#[derive(Clone, Copy, PartialEq, Debug, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Rating {
    /// Rated power.
    pub watts: Watts,
    /// Rated voltage.
    pub volts: Volts,
}

impl Rating {
    /// Nominal resistance, V²/P.
    pub fn resistance(self) -> Ohms {
        Ohms(self.volts.get() * self.volts.get() / self.watts.get())
    }

    /// Nominal current, P/V.
    pub fn current(self) -> Amps {
        Amps(self.watts.get() / self.volts.get())
    }
}

/// What the rating plate says, with the dimensions a ruler would give.
#[derive(Clone, Copy, PartialEq, Debug, Serialize, Deserialize)]
pub struct Plate {
    /// The model.
    pub model: HeaterModel,
    /// How its parts are wired.
    pub layout: Layout,
    /// Nominal storage.
    pub nominal: Volume,
    /// Both elements carry this rating.
    pub element: Rating,
    /// Both are of this length.
    pub length: ElementLength,
    /// Both are mounted so.
    pub mount: Mount,
    /// Working pressure.
    pub working_pressure: Pressure,
    /// Height of the water space.
    pub height: Metres,
    /// Height of the upper element above the bottom of the water space.
    pub upper_element: Metres,
    /// Height of the lower element.
    pub lower_element: Metres,
    /// Energy factor, from which the standby loss follows.
    pub energy_factor: f64,
}

/// A row of the models' table: gallons, watts, volts, height of the water space.
type Row = (f64, f64, f64, f64);

quantity::constants! {
    /// The models, in the order of their list.
    const MODELS: Constant<[Row; 10]> = Constant::new(
        "heaters of the practice yard: gallons, watts, volts, height in m",
        [
            (30.0, 3500.0, 240.0, 0.72),
            (40.0, 4500.0, 240.0, 1.10),
            (50.0, 4500.0, 208.0, 1.22),
            (80.0, 5500.0, 240.0, 1.32),
            (20.0, 1500.0, 120.0, 0.62),
            (50.0, 4500.0, 277.0, 1.22),
            (50.0, 4500.0, 240.0, 1.22),
            (80.0, 4500.0, 240.0, 1.32),
            (50.0, 4500.0, 240.0, 1.22),
            (120.0, 5500.0, 240.0, 1.52),
        ],
        "",
        Tag::Invented("sizes and ratings as the trade has them"),
    );
    /// Heights of upper and lower element as shares of the water space.
    const ELEMENTS_AT: Constant<[f64; 2]> =
        Constant::new("heights of the elements", [0.767, 0.167], "", Tag::Published("NREL OpenStudio-HPXML, waterheater.rb"));
    /// Height of a single element as a share of the water space.
    const SINGLE_AT: Constant =
        Constant::new("height of a single element", 0.25, "", Tag::Model("low, so that it heats most of the tank"));
    /// Energy factor, and what each gallon takes from it.
    const ENERGY_FACTOR: Constant<[f64; 2]> = Constant::new(
        "energy factor of an empty tank, and its fall for each gallon",
        [0.97, 0.00132],
        "",
        Tag::Published("NREL OpenStudio-HPXML, waterheater.rb"),
    );
    /// Working pressure.
    const WORKING_PRESSURE: Constant<Pressure> =
        Constant::of("working pressure", Pressure::psi(150.0), Tag::Memory("nameplates of storage heaters: 150 psi, tested at 300"));
    /// True water content of the nominal one.
    const CONTENT: Constant = Constant::new("water content, of the nominal", 0.90, "", Tag::Published("NREL OpenStudio-HPXML, waterheater.rb"));
    /// Voltages between which supplies are told by the plate.
    const BETWEEN: Constant<[f64; 3]> = Constant::new(
        "plate voltages between 120, 208, 240 and 277 V",
        [160.0, 224.0, 258.0],
        "V",
        Tag::Model("midway"),
    );
}

impl HeaterModel {
    /// Its rating plate.
    pub fn plate(self) -> Plate {
        let (gallons, watts, volts, height) = MODELS.get()[self as usize];
        let layout = match self {
            Self::Small20 => Layout::SingleElement,
            Self::Both50 => Layout::Simultaneous,
            Self::OffPeak80 => Layout::OffPeak,
            Self::Board50 => Layout::Electronic,
            Self::Short30
            | Self::Plain40
            | Self::Tall50At208
            | Self::Wide80
            | Self::Tall50At277
            | Self::Large120 => Layout::NonSimultaneous,
        };
        let length = match self {
            Self::Small20 | Self::OffPeak80 => ElementLength::Long,
            _ => ElementLength::Middle,
        };
        let mount = match self {
            Self::Tall50At277 | Self::Large120 => Mount::FourBolt,
            _ => Mount::ScrewIn,
        };
        let [upper, lower] = match layout {
            Layout::SingleElement => [SINGLE_AT.get(); 2],
            _ => ELEMENTS_AT.get(),
        };
        let [most, each] = ENERGY_FACTOR.get();
        Plate {
            model: self,
            layout,
            nominal: Volume::gallons(gallons),
            element: Rating { watts: Watts(watts), volts: Volts(volts) },
            length,
            mount,
            working_pressure: WORKING_PRESSURE.get(),
            height: Metres(height),
            upper_element: Metres(height * upper),
            lower_element: Metres(height * lower),
            energy_factor: most - each * gallons,
        }
    }
}

impl Plate {
    /// True water content, 0.90 of the nominal (trade sheet 4.4, published).
    pub fn content(&self) -> Volume {
        self.nominal * CONTENT.get()
    }

    /// Whether there is an element, a control and a compartment at a level.
    pub const fn has(&self, level: Level) -> bool {
        self.layout.has(level)
    }

    /// An element as the factory fits it.
    pub fn new_element(&self) -> Element {
        Element { length: self.length, ..Element::sound(self.element) }
    }

    /// The supply it is made for.
    pub fn supply(&self) -> ServiceKind {
        let volts = self.element.volts.get();
        let [low, wye, high] = BETWEEN.get();
        match () {
            () if volts < low => ServiceKind::Single120,
            () if volts < wye => ServiceKind::Wye208,
            () if volts < high => ServiceKind::Split240,
            () => ServiceKind::Wye277,
        }
    }

    /// The most current its branch circuit carries: every element that may run at once.
    pub fn current(&self) -> Amps {
        let elements = f64::from(self.layout.at_once());
        Amps(elements * self.element.watts.get() / self.element.volts.get())
    }
}
