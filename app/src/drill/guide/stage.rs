//! The stages of a service call in their order, and the drills of the two calls that a guide goes along with.

use bench::Mode;
use drill::Order;
use drill::order::Wanted;
use plant::climate::Climate;
use plant::fault::FaultId;
use plant::household::HouseholdKind;
use plant::{HeaterModel, Location};

/// The seed of both calls: a house without a trap.
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

/// A call that a guide goes along with.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub enum Guided {
    /// The short one: a limit that no longer makes. The tank stays full.
    First,
    /// The long one: an open element, so that the tank is drained and filled again before power.
    Second,
}

impl Guided {
    /// Both, in order.
    pub const ALL: [Self; 2] = [Self::First, Self::Second];

    /// Its name in marks of the page and in the book.
    pub const fn name(self) -> &'static str {
        match self {
            Self::First => "first",
            Self::Second => "second",
        }
    }

    /// Its drill: computed like any other.
    pub fn order(self) -> Order {
        let fault = match self {
            Self::First => FaultId::F09,
            Self::Second => FaultId::F02,
        };
        Order {
            heater: Some(HeaterModel::Plain40),
            leg_volts: Some(120.0),
            household: Some(HouseholdKind::Family),
            climate: Some(Climate::MillValley),
            location: Some(Location::Basement),
            day: Some(DAY),
            fault: Wanted::One(fault),
            ..Order::chance(SEED, Mode::Coached)
        }
    }

    /// Which of them a drill is.
    pub fn of(order: &Order) -> Option<Self> {
        Self::ALL.into_iter().find(|one| *order == one.order())
    }

    /// The one to go on with after a drill, where that was the one before it.
    pub fn after(order: &Order) -> Option<Self> {
        (Self::of(order)? == Self::First).then_some(Self::Second)
    }

    /// The stages it goes through.
    pub fn stages(self) -> impl Iterator<Item = Stage> {
        Stage::ALL.into_iter().filter(move |stage| self == Self::Second || *stage != Stage::Refilled)
    }
}
