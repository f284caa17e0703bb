//! Behind the lower cover, one table for each way a heater is wired. Data only.

use plant::{Layout, Screw, Wire};

use super::{Fixed, Strand, fixed, leaving, within};

const ELEMENT: [Fixed; 2] =
    [fixed(Screw::LEa, (116.0, 250.0), (-10.0, 32.0)), fixed(Screw::LEb, (222.0, 250.0), (-14.0, 32.0))];
const SHELL: Fixed = fixed(Screw::Shell, (34.0, 214.0), (-29.0, -16.0));

const TWO: &[Fixed] = &[
    fixed(Screw::D1, (90.0, 92.0), (18.0, 5.0)),
    fixed(Screw::D2, (250.0, 92.0), (-38.0, 5.0)),
    ELEMENT[0],
    ELEMENT[1],
    SHELL,
];

const OFF_PEAK: &[Fixed] = &[
    fixed(Screw::H5, (62.0, 54.0), (-8.0, -16.0)),
    fixed(Screw::H6, (124.0, 54.0), (-8.0, -16.0)),
    fixed(Screw::H7, (216.0, 54.0), (-8.0, -16.0)),
    fixed(Screw::H8, (278.0, 54.0), (-8.0, -16.0)),
    fixed(Screw::D1, (90.0, 124.0), (18.0, 5.0)),
    fixed(Screw::D2, (250.0, 124.0), (-38.0, 5.0)),
    ELEMENT[0],
    ELEMENT[1],
    SHELL,
];

const BARE: &[Fixed] = &[ELEMENT[0], ELEMENT[1], SHELL];

/// The screws.
pub const fn screws(layout: Layout) -> &'static [Fixed] {
    match layout {
        Layout::NonSimultaneous | Layout::Simultaneous => TWO,
        Layout::OffPeak => OFF_PEAK,
        Layout::Electronic => BARE,
        Layout::SingleElement => &[],
    }
}

const PERMANENT: Strand =
    leaving(Wire::LowerPermanent, 1, &[(262.0, 224.0), (312.0, 150.0), (312.0, 0.0)], "red");

const TWO_WIRES: &[Strand] = &[
    leaving(Wire::Transfer, 1, &[(70.0, 50.0), (64.0, 0.0)], "blue"),
    leaving(Wire::LowerFeed, 1, &[(70.0, 50.0), (64.0, 0.0)], "black"),
    within(Wire::LowerSwitched, &[(246.0, 150.0), (140.0, 190.0)], "black"),
    PERMANENT,
];

const OFF_PEAK_WIRES: &[Strand] = &[
    leaving(Wire::OffPeakFeedA, 1, &[(34.0, 30.0), (32.0, 0.0)], "black"),
    leaving(Wire::OffPeakFeedB, 1, &[(186.0, 30.0), (182.0, 0.0)], "red"),
    leaving(Wire::Interlock, 0, &[(154.0, 30.0), (158.0, 0.0)], "black"),
    within(Wire::OffPeakPermanent, &[(316.0, 120.0), (300.0, 220.0)], "red"),
    leaving(Wire::Transfer, 1, &[(24.0, 104.0), (12.0, 60.0), (12.0, 0.0)], "blue"),
    within(Wire::LowerSwitched, &[(246.0, 180.0), (140.0, 196.0)], "black"),
];

const BOARD_WIRES: &[Strand] =
    &[leaving(Wire::BoardLower, 1, &[(72.0, 160.0), (64.0, 0.0)], "blue"), PERMANENT];

/// The wires.
pub const fn wires(layout: Layout) -> &'static [Strand] {
    match layout {
        Layout::NonSimultaneous | Layout::Simultaneous => TWO_WIRES,
        Layout::OffPeak => OFF_PEAK_WIRES,
        Layout::Electronic => BOARD_WIRES,
        Layout::SingleElement => &[],
    }
}
