//! Behind the upper cover, one table for each way a heater is wired. Data only.

use plant::{Layout, Screw, Wire};

use super::{Fixed, Strand, fixed, leaving, within};

const LIMIT: [Fixed; 4] = [
    fixed(Screw::H1, (80.0, 52.0), (18.0, 5.0)),
    fixed(Screw::H3, (260.0, 52.0), (-38.0, 5.0)),
    fixed(Screw::H2, (80.0, 100.0), (18.0, 5.0)),
    fixed(Screw::H4, (260.0, 100.0), (-38.0, 5.0)),
];
const ELEMENT: [Fixed; 2] =
    [fixed(Screw::UEa, (116.0, 296.0), (-46.0, 5.0)), fixed(Screw::UEb, (222.0, 296.0), (16.0, 20.0))];
const SHELL: Fixed = fixed(Screw::Shell, (34.0, 256.0), (-15.0, 26.0));

const TWO: &[Fixed] = &[
    LIMIT[0],
    LIMIT[1],
    LIMIT[2],
    LIMIT[3],
    fixed(Screw::U1, (80.0, 178.0), (18.0, 5.0)),
    fixed(Screw::U4, (260.0, 178.0), (-38.0, 5.0)),
    fixed(Screw::U2, (170.0, 208.0), (16.0, 5.0)),
    ELEMENT[0],
    ELEMENT[1],
    SHELL,
];

const ONE: &[Fixed] = &[
    LIMIT[0],
    LIMIT[1],
    LIMIT[2],
    LIMIT[3],
    fixed(Screw::U1, (80.0, 190.0), (18.0, 5.0)),
    fixed(Screw::U2, (260.0, 190.0), (-38.0, 5.0)),
    ELEMENT[0],
    ELEMENT[1],
    SHELL,
];

const OFF_PEAK: &[Fixed] = &[
    LIMIT[0],
    LIMIT[1],
    LIMIT[2],
    LIMIT[3],
    fixed(Screw::U1, (76.0, 168.0), (18.0, 5.0)),
    fixed(Screw::U4, (264.0, 168.0), (-38.0, 5.0)),
    fixed(Screw::U2, (124.0, 210.0), (-34.0, 5.0)),
    fixed(Screw::U3, (216.0, 210.0), (18.0, 5.0)),
    ELEMENT[0],
    ELEMENT[1],
    SHELL,
];

const BOARD: &[Fixed] = &[
    LIMIT[0],
    LIMIT[1],
    LIMIT[2],
    LIMIT[3],
    fixed(Screw::T1, (98.0, 164.0), (-8.0, -20.0)),
    fixed(Screw::T2, (146.0, 164.0), (-8.0, -20.0)),
    fixed(Screw::T3, (194.0, 164.0), (-8.0, -20.0)),
    fixed(Screw::T4, (242.0, 164.0), (-8.0, -20.0)),
    fixed(Screw::K1, (62.0, 212.0), (16.0, 5.0)),
    fixed(Screw::K3, (124.0, 212.0), (16.0, 5.0)),
    fixed(Screw::K4, (190.0, 212.0), (16.0, 5.0)),
    fixed(Screw::K2, (278.0, 212.0), (-36.0, 5.0)),
    ELEMENT[0],
    ELEMENT[1],
    SHELL,
];

/// The screws.
pub const fn screws(layout: Layout) -> &'static [Fixed] {
    match layout {
        Layout::NonSimultaneous | Layout::Simultaneous => TWO,
        Layout::OffPeak => OFF_PEAK,
        Layout::SingleElement => ONE,
        Layout::Electronic => BOARD,
    }
}

const FEED: [Strand; 2] = [
    leaving(Wire::FeedA, 1, &[(40.0, 44.0), (18.0, 0.0)], "black"),
    leaving(Wire::FeedB, 1, &[(302.0, 42.0), (322.0, 0.0)], "red"),
];
const PERMANENT: Strand =
    within(Wire::UpperPermanent, &[(286.0, 140.0), (300.0, 200.0), (290.0, 270.0)], "red");
const LOWER_PERMANENT: Strand =
    leaving(Wire::LowerPermanent, 0, &[(304.0, 96.0), (324.0, 150.0), (324.0, 330.0)], "red");

const TWO_WIRES: &[Strand] = &[
    FEED[0],
    FEED[1],
    within(Wire::Strap, &[], "strap"),
    within(Wire::UpperSwitched, &[(142.0, 250.0)], "black"),
    PERMANENT,
    LOWER_PERMANENT,
    leaving(Wire::Transfer, 0, &[(264.0, 220.0), (270.0, 330.0)], "blue"),
    leaving(Wire::LowerFeed, 0, &[(48.0, 140.0), (16.0, 190.0), (12.0, 330.0)], "black"),
];

const ONE_WIRES: &[Strand] = &[
    FEED[0],
    FEED[1],
    within(Wire::Strap, &[], "strap"),
    within(Wire::UpperSwitched, &[(250.0, 250.0), (140.0, 256.0)], "black"),
    within(Wire::UpperPermanent, &[(304.0, 130.0), (312.0, 210.0), (300.0, 280.0)], "red"),
];

const OFF_PEAK_WIRES: &[Strand] = &[
    FEED[0],
    FEED[1],
    within(Wire::Strap, &[], "strap"),
    within(Wire::UpperSwitched, &[(128.0, 250.0)], "black"),
    PERMANENT,
    leaving(Wire::Transfer, 0, &[(272.0, 220.0), (276.0, 330.0)], "blue"),
    leaving(Wire::Interlock, 1, &[(178.0, 256.0), (170.0, 330.0)], "black"),
];

const BOARD_WIRES: &[Strand] = &[
    FEED[0],
    FEED[1],
    within(Wire::BoardLine, &[(46.0, 140.0)], "black"),
    within(Wire::BoardReturn, &[(290.0, 150.0)], "red"),
    within(Wire::BoardUpper, &[(126.0, 250.0)], "black"),
    leaving(Wire::BoardLower, 0, &[(176.0, 256.0), (170.0, 330.0)], "blue"),
    within(Wire::UpperPermanent, &[(310.0, 130.0), (314.0, 230.0), (290.0, 280.0)], "red"),
    LOWER_PERMANENT,
];

/// The wires.
pub const fn wires(layout: Layout) -> &'static [Strand] {
    match layout {
        Layout::NonSimultaneous | Layout::Simultaneous => TWO_WIRES,
        Layout::OffPeak => OFF_PEAK_WIRES,
        Layout::SingleElement => ONE_WIRES,
        Layout::Electronic => BOARD_WIRES,
    }
}
