//! The taps of the house: flows, heights, lines, and what can be wrong with one fixture.

use quantity::{Constant, Flow, Metres, Tag, Volume};
use serde::{Deserialize, Serialize};

use crate::named::named;

quantity::constants! {
    /// Flows of the taps, hot side fully open, by `Tap::ALL`.
    const NOMINAL: Constant<[f64; 4]> = Constant::new(
        "flow of each tap's hot side at 60 psi",
        [4.0, 2.2, 5.0, 2.5],
        "gpm",
        Tag::Memory("faucets 2.2 gpm by the federal limit; tub, laundry and an older shower common practice"),
    );
    /// Heights of the spouts by `Tap::ALL`.
    const HEIGHTS: Constant<[f64; 4]> = Constant::new(
        "height of each spout above the bottom of the tank",
        [1.3, 3.6, 6.0, 7.4],
        "m",
        Tag::Invented("heater in the basement"),
    );
    /// Hot lines by `Tap::ALL`.
    const LINES: Constant<[f64; 4]> = Constant::new(
        "water in each hot line",
        [0.6, 1.0, 1.8, 2.0],
        "L",
        Tag::Invented("half-inch pipe, about 0.15 L/m"),
    );
}

named! {
    /// Hot taps of the house, lowest first.
    Tap {
        /// Laundry tub, in the basement.
        Laundry = "laundry",
        /// Kitchen sink, nearest the heater.
        Kitchen = "kitchen",
        /// Bathtub.
        Bath = "bath",
        /// Shower, highest.
        Shower = "shower",
    }
}

/// How many taps there are: the length of every table by tap.
pub const TAPS: usize = Tap::ALL.len();

impl Tap {
    /// Its place in every table by tap.
    pub const fn index(self) -> usize {
        self as usize
    }

    /// Flow of hot water with the tap fully open, at 60 psi before it. A faucet gives 2.2 gpm (federal limit
    /// for faucets, from memory); tub, laundry and an older shower as is common practice, no source.
    pub const fn nominal(self) -> Flow {
        Flow::gpm(NOMINAL.get()[self.index()])
    }

    /// Height of its spout above the bottom of the tank, heater in the basement (invented house).
    pub const fn height(self) -> Metres {
        Metres(HEIGHTS.get()[self.index()])
    }

    /// Volume of the hot line from the heater to the tap (invented house; half-inch pipe, about 0.15 L/m).
    pub const fn line(self) -> Volume {
        Volume::litres(LINES.get()[self.index()])
    }
}

/// What is particular about one fixture.
#[derive(Clone, Copy, PartialEq, Debug, Default, Serialize, Deserialize)]
pub struct Fixture {
    /// Cold water that its limit stop lets in at the hottest setting, as a share of the hot side's opening; 0
    /// when the stop leaves the hot side alone.
    pub limit_stop: f64,
    /// Opening between its cold and its hot side, equivalent diameter in metres; 0 when the cartridge or its
    /// checks hold.
    pub crossover: f64,
    /// Its two stops under the basin are shut: nothing passes either side.
    pub shut: bool,
}
