//! Load center, box in the line, junction box and the heater's top: the same for every heater. Data only.

use plant::{Screw, Wire};

use super::{Fixed, Strand, fixed, leaving};

/// Screws of the junction box.
pub const BOX: &[Fixed] = &[
    fixed(Screw::Ja, (84.0, 150.0), (-42.0, 5.0)),
    fixed(Screw::Jb, (176.0, 180.0), (16.0, -12.0)),
    fixed(Screw::Jc, (84.0, 240.0), (14.0, 5.0)),
    fixed(Screw::Jd, (176.0, 264.0), (16.0, -12.0)),
    fixed(Screw::Jg, (266.0, 150.0), (16.0, -12.0)),
];

/// Screws of the box in the line.
pub const IN_LINE: &[Fixed] = &[
    fixed(Screw::X1, (90.0, 80.0), (18.0, 5.0)),
    fixed(Screw::X2, (250.0, 80.0), (-38.0, 5.0)),
    fixed(Screw::X3, (90.0, 250.0), (18.0, 5.0)),
    fixed(Screw::X4, (250.0, 250.0), (-38.0, 5.0)),
];

/// Bare metal on top of the heater.
pub const TOP: &[Fixed] =
    &[fixed(Screw::Shell, (170.0, 232.0), (18.0, 5.0)), fixed(Screw::Pipe, (104.0, 92.0), (22.0, 5.0))];

/// Screws of the open load center.
pub const PANEL: &[Fixed] = &[
    fixed(Screw::M1, (46.0, 44.0), (-8.0, -17.0)),
    fixed(Screw::M2, (102.0, 44.0), (-8.0, -17.0)),
    fixed(Screw::N, (46.0, 294.0), (16.0, 5.0)),
    fixed(Screw::G, (102.0, 294.0), (-4.0, -18.0)),
    fixed(Screw::B1, (226.0, 196.0), (-8.0, -16.0)),
    fixed(Screw::B2, (226.0, 240.0), (-8.0, 28.0)),
    fixed(Screw::S1, (226.0, 84.0), (-8.0, -16.0)),
    fixed(Screw::S2, (226.0, 128.0), (-8.0, 28.0)),
];

/// Wires of the junction box.
pub const BOX_WIRES: &[Strand] = &[
    leaving(Wire::CableA, 1, &[(96.0, 96.0), (150.0, 40.0), (158.0, 0.0)], "black"),
    leaving(Wire::CableB, 1, &[(178.0, 110.0), (172.0, 0.0)], "white"),
    leaving(Wire::CableG, 1, &[(258.0, 100.0), (196.0, 50.0), (186.0, 0.0)], "green"),
    leaving(Wire::SecondA, 1, &[(50.0, 122.0), (0.0, 100.0)], "black"),
    leaving(Wire::SecondB, 1, &[(130.0, 150.0), (60.0, 70.0), (0.0, 66.0)], "red"),
    leaving(Wire::CableN, 1, &[(178.0, 110.0), (172.0, 0.0)], "white"),
    leaving(Wire::OffPeakA, 1, &[(40.0, 220.0), (0.0, 200.0)], "black"),
    leaving(Wire::OffPeakB, 1, &[(120.0, 290.0), (0.0, 240.0)], "red"),
    leaving(Wire::OffPeakFeedA, 0, &[(80.0, 290.0), (66.0, 330.0)], "black"),
    leaving(Wire::OffPeakFeedB, 0, &[(170.0, 300.0), (160.0, 330.0)], "red"),
    leaving(Wire::WhipA, 1, &[(96.0, 96.0), (150.0, 40.0), (158.0, 0.0)], "black"),
    leaving(Wire::WhipB, 1, &[(178.0, 110.0), (172.0, 0.0)], "red"),
    leaving(Wire::FeedA, 0, &[(126.0, 210.0), (118.0, 330.0)], "black"),
    leaving(Wire::FeedB, 0, &[(214.0, 236.0), (216.0, 330.0)], "red"),
    leaving(Wire::Bond, 0, &[(276.0, 220.0), (262.0, 330.0)], "green"),
];

/// Wires on top of the heater.
pub const TOP_WIRES: &[Strand] = &[leaving(Wire::Bond, 1, &[(214.0, 200.0), (214.0, 140.0)], "green")];

/// Wires of the open load center.
pub const PANEL_WIRES: &[Strand] = &[
    leaving(Wire::CableA, 0, &[(280.0, 190.0), (306.0, 100.0), (306.0, 0.0)], "black"),
    leaving(Wire::CableB, 0, &[(290.0, 240.0), (320.0, 140.0), (320.0, 0.0)], "white"),
    leaving(Wire::CableG, 0, &[(200.0, 306.0), (334.0, 300.0), (334.0, 0.0)], "green"),
    leaving(Wire::SecondA, 0, &[(262.0, 82.0), (278.0, 40.0), (278.0, 0.0)], "black"),
    leaving(Wire::SecondB, 0, &[(270.0, 126.0), (292.0, 60.0), (292.0, 0.0)], "red"),
    leaving(Wire::CableN, 0, &[(20.0, 240.0), (16.0, 0.0)], "white"),
    leaving(Wire::OffPeakA, 0, &[(262.0, 82.0), (278.0, 40.0), (278.0, 0.0)], "black"),
    leaving(Wire::OffPeakB, 0, &[(270.0, 126.0), (292.0, 60.0), (292.0, 0.0)], "red"),
    leaving(Wire::BoxA, 0, &[(280.0, 190.0), (306.0, 100.0), (306.0, 0.0)], "black"),
    leaving(Wire::BoxB, 0, &[(290.0, 240.0), (320.0, 140.0), (320.0, 0.0)], "red"),
];

/// Wires of the box in the line.
pub const IN_LINE_WIRES: &[Strand] = &[
    leaving(Wire::BoxA, 1, &[(96.0, 40.0), (120.0, 0.0)], "black"),
    leaving(Wire::BoxB, 1, &[(244.0, 40.0), (220.0, 0.0)], "red"),
    leaving(Wire::WhipA, 0, &[(96.0, 300.0), (120.0, 330.0)], "black"),
    leaving(Wire::WhipB, 0, &[(244.0, 300.0), (220.0, 330.0)], "red"),
];
