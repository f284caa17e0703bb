//! What people have heard about water heaters and ask the technician: is that so?

use serde::{Deserialize, Serialize};

/// Something heard. Some of it is true.
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Debug, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Hearsay {
    /// Sediment makes the electric bill higher.
    SedimentBill,
    /// The tank needs a number 6 bonding wire of its own.
    BondOfItsOwn,
    /// Nothing that makes people ill lives in water at 120 °F.
    WarmIsClean,
    /// The first-hour rating is seven tenths of the tank.
    SevenTenths,
    /// Gallons an hour are gallons by 8.33 by degrees, over watts.
    RecoverySum,
    /// Water at 140 °F burns within seconds.
    HotBurns,
    /// An element switched on in an empty tank burns out.
    DryBurns,
    /// The relief valve's pipe must never be closed off.
    OpenPipe,
    /// There is a rod that is eaten so that the tank is not.
    RodIsEaten,
    /// In winter the same heater gives less hot water.
    WinterIsLess,
}

impl Hearsay {
    /// All of it.
    pub const ALL: [Self; 10] = [
        Self::SedimentBill,
        Self::BondOfItsOwn,
        Self::WarmIsClean,
        Self::SevenTenths,
        Self::RecoverySum,
        Self::HotBurns,
        Self::DryBurns,
        Self::OpenPipe,
        Self::RodIsEaten,
        Self::WinterIsLess,
    ];

    /// Whether it is so. Not so: trade sheet, section 11, statements 16, 11, 21, 26 and 17. So: its 8.2 (an owner's manual's
    /// label), 2.7 (a distributor's pages), 5.1 (no valve between tank and relief valve: ANSI Z21.22/CSA 4.4), and 9, F56
    /// and F42 (common practice, no source).
    pub const fn is_so(self) -> bool {
        !matches!(
            self,
            Self::SedimentBill
                | Self::BondOfItsOwn
                | Self::WarmIsClean
                | Self::SevenTenths
                | Self::RecoverySum
        )
    }
}
