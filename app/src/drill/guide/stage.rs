//! The stages of a service call in their order, and the drill that the first call is.

use bench::Mode;
use drill::Order;
use drill::order::Wanted;
use plant::climate::Climate;
use plant::fault::FaultId;
use plant::household::HouseholdKind;
use plant::{HeaterModel, Location};

/// The seed of the first call: a house without a trap.
const SEED: u32 = 20_417;
/// A day in spring.
const DAY: u16 = 100;

/// A stage.
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Debug)]
pub enum Stage {
    /// The people are heard and told, the plate is read.
    Heard,
    /// Power off.
    Off,
    /// Locked and tagged.
    Locked,
    /// Proved dead.
    Dead,
    /// Read.
    Read,
    /// The one thing wrong is named.
    Named,
    /// That part is changed.
    Changed,
    /// Water in, air out, nothing leaks.
    Refilled,
    /// Power on.
    On,
    /// The repair is proved.
    Proved,
    /// The people know, and have their house back.
    Over,
}

impl Stage {
    /// All of them, in order.
    pub const ALL: [Self; 11] = [
        Self::Heard,
        Self::Off,
        Self::Locked,
        Self::Dead,
        Self::Read,
        Self::Named,
        Self::Changed,
        Self::Refilled,
        Self::On,
        Self::Proved,
        Self::Over,
    ];

    /// Its name in the book.
    pub const fn name(self) -> &'static str {
        match self {
            Self::Heard => "heard",
            Self::Off => "off",
            Self::Locked => "locked",
            Self::Dead => "dead",
            Self::Read => "read",
            Self::Named => "named",
            Self::Changed => "changed",
            Self::Refilled => "refilled",
            Self::On => "on",
            Self::Proved => "proved",
            Self::Over => "over",
        }
    }
}

/// The drill of the first call: computed like any other.
pub fn first_call() -> Order {
    Order {
        heater: Some(HeaterModel::Plain40),
        leg_volts: Some(120.0),
        household: Some(HouseholdKind::Family),
        climate: Some(Climate::MillValley),
        location: Some(Location::Basement),
        day: Some(DAY),
        fault: Wanted::One(FaultId::F02),
        ..Order::chance(SEED, Mode::Coached)
    }
}

/// Whether a drill is the first call.
pub fn is_first_call(order: &Order) -> bool {
    *order == first_call()
}
