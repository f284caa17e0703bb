//! The wires: what each joins, and how long it usually is.

use quantity::{Constant, Metres, Tag};

use crate::named::named;
use crate::points::Screw;

quantity::constants! {
    /// A branch cable.
    pub const BRANCH_RUN: Constant<Metres> =
        Constant::of("length of a branch cable", Metres(10.0), Tag::Model("a usual run from panel to heater"));
    /// From the load center to a box beside the heater.
    pub const TO_BOX: Constant<Metres> =
        Constant::of("cable up to a box in the line", Metres(8.0), Tag::Model("most of a 10 m run"));
    /// From that box to the heater.
    pub const WHIP: Constant<Metres> =
        Constant::of("whip from the box to the heater", Metres(2.0), Tag::Model("the rest of a 10 m run"));
    /// A lead from the junction box to the upper limit.
    const FEED: Constant<Metres> = Constant::of("lead to the upper limit", Metres(0.5), LEADS);
    /// A lead from the junction box to the lower limit.
    const LONG_FEED: Constant<Metres> = Constant::of("lead to the lower limit", Metres(1.3), LEADS);
    /// The bond from the junction box to the tank.
    const BOND: Constant<Metres> = Constant::of("bond to the tank", Metres(0.3), LEADS);
    /// The strap from limit to thermostat.
    const STRAP: Constant<Metres> = Constant::of("strap", Metres(0.03), LEADS);
    /// A lead within one compartment.
    const SHORT_LEAD: Constant<Metres> = Constant::of("lead within a compartment", Metres(0.15), LEADS);
    /// A lead from the upper to the lower control.
    const BETWEEN_CONTROLS: Constant<Metres> = Constant::of("lead between controls", Metres(0.8), LEADS);
    /// A lead from the upper compartment to the lower element.
    const DOWN_LEAD: Constant<Metres> = Constant::of("lead to the lower element", Metres(0.9), LEADS);
}

/// Where the lengths of a heater's leads come from.
const LEADS: Tag = Tag::Model("as far apart as the parts of a 40-gallon heater are");

named! {
    /// A conductor, named by what it joins as the factory or the installer left it.
    Wire {
        /// Branch cable, leg 1: B1 to JA.
        CableA = "cable-a",
        /// Branch cable, leg 2 (white, re-identified): B2 to JB.
        CableB = "cable-b",
        /// Neutral of the branch cable of a hot-and-neutral heater: N to JB.
        CableN = "cable-n",
        /// Equipment ground of the branch cable: G to JG.
        CableG = "cable-g",
        /// Second cable, leg 1: S1 to JA, where there is one.
        SecondA = "second-a",
        /// Second cable, leg 2: S2 to JB.
        SecondB = "second-b",
        /// Off-peak cable, leg 1: S1 to JC.
        OffPeakA = "off-peak-a",
        /// Off-peak cable, leg 2: S2 to JD.
        OffPeakB = "off-peak-b",
        /// Branch cable up to the box in the line, leg 1: B1 to X1.
        BoxA = "to-box-a",
        /// Branch cable up to that box, leg 2: B2 to X2.
        BoxB = "to-box-b",
        /// From that box to the heater, leg 1: X3 to JA.
        WhipA = "whip-a",
        /// From that box to the heater, leg 2: X4 to JB.
        WhipB = "whip-b",
        /// Heater lead, leg 1: JA to H1.
        FeedA = "feed-a",
        /// Heater lead, leg 2: JB to H3.
        FeedB = "feed-b",
        /// Bond from the junction box to the tank: JG to shell.
        Bond = "bond",
        /// Metal strap H2 to U1.
        Strap = "strap",
        /// U2 to UEa.
        UpperSwitched = "upper-switched",
        /// H4 to UEb.
        UpperPermanent = "upper-permanent",
        /// U4 to D1.
        Transfer = "transfer",
        /// D2 to LEa.
        LowerSwitched = "lower-switched",
        /// H4 to LEb.
        LowerPermanent = "lower-permanent",
        /// H2 to D1, where both elements may run.
        LowerFeed = "lower-feed",
        /// Off-peak lead, leg 1: JC to H5.
        OffPeakFeedA = "off-peak-feed-a",
        /// Off-peak lead, leg 2: JD to H7.
        OffPeakFeedB = "off-peak-feed-b",
        /// H6 to U3.
        Interlock = "interlock",
        /// H8 to LEb.
        OffPeakPermanent = "off-peak-permanent",
        /// H2 to K1.
        BoardLine = "board-line",
        /// H4 to K2.
        BoardReturn = "board-return",
        /// K3 to UEa.
        BoardUpper = "board-upper",
        /// K4 to LEa.
        BoardLower = "board-lower",
    }
}

impl Wire {
    /// The leg of an off-peak cable that it is.
    pub const fn off_peak_leg(self) -> Option<usize> {
        match self {
            Self::OffPeakA => Some(0),
            Self::OffPeakB => Some(1),
            _ => None,
        }
    }

    /// The two screws it belongs on.
    pub const fn home(self) -> [Screw; 2] {
        match self {
            Self::CableA => [Screw::B1, Screw::Ja],
            Self::CableB => [Screw::B2, Screw::Jb],
            Self::CableG => [Screw::G, Screw::Jg],
            Self::SecondA => [Screw::S1, Screw::Ja],
            Self::SecondB => [Screw::S2, Screw::Jb],
            Self::FeedA => [Screw::Ja, Screw::H1],
            Self::FeedB => [Screw::Jb, Screw::H3],
            Self::Bond => [Screw::Jg, Screw::Shell],
            Self::Strap => [Screw::H2, Screw::U1],
            Self::UpperSwitched => [Screw::U2, Screw::UEa],
            Self::UpperPermanent => [Screw::H4, Screw::UEb],
            Self::Transfer => [Screw::U4, Screw::D1],
            Self::LowerSwitched => [Screw::D2, Screw::LEa],
            Self::LowerPermanent => [Screw::H4, Screw::LEb],
            Self::CableN => [Screw::N, Screw::Jb],
            Self::OffPeakA => [Screw::S1, Screw::Jc],
            Self::OffPeakB => [Screw::S2, Screw::Jd],
            Self::BoxA => [Screw::B1, Screw::X1],
            Self::BoxB => [Screw::B2, Screw::X2],
            Self::WhipA => [Screw::X3, Screw::Ja],
            Self::WhipB => [Screw::X4, Screw::Jb],
            Self::LowerFeed => [Screw::H2, Screw::D1],
            Self::OffPeakFeedA => [Screw::Jc, Screw::H5],
            Self::OffPeakFeedB => [Screw::Jd, Screw::H7],
            Self::Interlock => [Screw::H6, Screw::U3],
            Self::OffPeakPermanent => [Screw::H8, Screw::LEb],
            Self::BoardLine => [Screw::H2, Screw::K1],
            Self::BoardReturn => [Screw::H4, Screw::K2],
            Self::BoardUpper => [Screw::K3, Screw::UEa],
            Self::BoardLower => [Screw::K4, Screw::LEa],
        }
    }

    /// Its usual length.
    pub const fn usual_length(self) -> Metres {
        match self {
            Self::CableA
            | Self::CableB
            | Self::CableG
            | Self::CableN
            | Self::SecondA
            | Self::SecondB
            | Self::OffPeakA
            | Self::OffPeakB => BRANCH_RUN.get(),
            Self::BoxA | Self::BoxB => TO_BOX.get(),
            Self::WhipA | Self::WhipB => WHIP.get(),
            Self::FeedA | Self::FeedB => FEED.get(),
            Self::OffPeakFeedA | Self::OffPeakFeedB => LONG_FEED.get(),
            Self::Bond => BOND.get(),
            Self::Strap => STRAP.get(),
            Self::UpperSwitched
            | Self::UpperPermanent
            | Self::LowerSwitched
            | Self::OffPeakPermanent
            | Self::BoardLine
            | Self::BoardReturn
            | Self::BoardUpper => SHORT_LEAD.get(),
            Self::Transfer | Self::LowerFeed | Self::Interlock => BETWEEN_CONTROLS.get(),
            Self::LowerPermanent | Self::BoardLower => DOWN_LEAD.get(),
        }
    }

    /// Whether it is a conductor of a cable from the load center, not a lead of the heater.
    pub const fn is_cable(self) -> bool {
        matches!(
            self,
            Self::CableA
                | Self::CableB
                | Self::CableG
                | Self::CableN
                | Self::SecondA
                | Self::SecondB
                | Self::OffPeakA
                | Self::OffPeakB
                | Self::BoxA
                | Self::BoxB
                | Self::WhipA
                | Self::WhipB
        )
    }

    /// Its place in `Wire::ALL` and in every table by wire.
    pub const fn index(self) -> usize {
        self as usize
    }
}
