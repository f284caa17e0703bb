//! Where screws and wires lie in each detail, 340 by 330. Data only.

use plant::{Level, Place, Screw, Wire};

/// A position.
pub type At = (f64, f64);

/// Width and height of a detail.
pub const SIZE: (f64, f64) = (340.0, 330.0);

/// A screw in a detail: where it is, and where its name stands from it.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct Fixed {
    /// Which.
    pub screw: Screw,
    /// Its middle.
    pub at: At,
    /// Its name's place from there.
    pub name: At,
}

const fn fixed(screw: Screw, at: At, name: At) -> Fixed {
    Fixed { screw, at, name }
}

/// A wire in a detail.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct Strand {
    /// Which.
    pub wire: Wire,
    /// The end that is here, when only one is.
    pub side: Option<u8>,
    /// The way from that end (or from the first one) to the other end or out of the picture.
    pub via: &'static [At],
    /// Its colour.
    pub class: &'static str,
}

const fn within(wire: Wire, via: &'static [At], class: &'static str) -> Strand {
    Strand { wire, side: None, via, class }
}

const fn leaving(wire: Wire, side: u8, via: &'static [At], class: &'static str) -> Strand {
    Strand { wire, side: Some(side), via, class }
}

const UPPER: &[Fixed] = &[
    fixed(Screw::H1, (80.0, 52.0), (18.0, 5.0)),
    fixed(Screw::H3, (260.0, 52.0), (-38.0, 5.0)),
    fixed(Screw::H2, (80.0, 100.0), (18.0, 5.0)),
    fixed(Screw::H4, (260.0, 100.0), (-38.0, 5.0)),
    fixed(Screw::U1, (80.0, 178.0), (18.0, 5.0)),
    fixed(Screw::U4, (260.0, 178.0), (-38.0, 5.0)),
    fixed(Screw::U2, (170.0, 208.0), (16.0, 5.0)),
    fixed(Screw::UEa, (116.0, 296.0), (-46.0, 5.0)),
    fixed(Screw::UEb, (222.0, 296.0), (16.0, 20.0)),
    fixed(Screw::U3, (200.0, 150.0), (16.0, -8.0)),
    fixed(Screw::K1, (66.0, 190.0), (-40.0, 5.0)),
    fixed(Screw::K2, (280.0, 195.0), (16.0, 5.0)),
    fixed(Screw::K3, (140.0, 215.0), (-40.0, 5.0)),
    fixed(Screw::K4, (200.0, 215.0), (16.0, 5.0)),
    fixed(Screw::T1, (120.0, 140.0), (-8.0, -16.0)),
    fixed(Screw::T2, (165.0, 140.0), (-8.0, -16.0)),
    fixed(Screw::T3, (210.0, 140.0), (-8.0, -16.0)),
    fixed(Screw::T4, (255.0, 146.0), (16.0, 5.0)),
    fixed(Screw::Shell, (34.0, 252.0), (-22.0, -16.0)),
];

const LOWER: &[Fixed] = &[
    fixed(Screw::D1, (90.0, 92.0), (18.0, 5.0)),
    fixed(Screw::D2, (250.0, 92.0), (-38.0, 5.0)),
    fixed(Screw::LEa, (116.0, 250.0), (-18.0, 32.0)),
    fixed(Screw::LEb, (222.0, 250.0), (-14.0, 32.0)),
    fixed(Screw::H5, (60.0, 30.0), (-8.0, -16.0)),
    fixed(Screw::H6, (130.0, 30.0), (-8.0, -16.0)),
    fixed(Screw::H7, (200.0, 30.0), (-8.0, -16.0)),
    fixed(Screw::H8, (270.0, 30.0), (-8.0, -16.0)),
    fixed(Screw::Shell, (34.0, 214.0), (-22.0, -16.0)),
];

const BOX: &[Fixed] = &[
    fixed(Screw::Ja, (84.0, 150.0), (-42.0, 5.0)),
    fixed(Screw::Jb, (176.0, 180.0), (16.0, -12.0)),
    fixed(Screw::Jc, (84.0, 240.0), (-42.0, 5.0)),
    fixed(Screw::Jd, (176.0, 264.0), (16.0, -12.0)),
    fixed(Screw::Jg, (266.0, 150.0), (16.0, -12.0)),
];

const IN_LINE: &[Fixed] = &[
    fixed(Screw::X1, (90.0, 80.0), (18.0, 5.0)),
    fixed(Screw::X2, (250.0, 80.0), (-38.0, 5.0)),
    fixed(Screw::X3, (90.0, 250.0), (18.0, 5.0)),
    fixed(Screw::X4, (250.0, 250.0), (-38.0, 5.0)),
];

const TOP: &[Fixed] =
    &[fixed(Screw::Shell, (170.0, 232.0), (18.0, 5.0)), fixed(Screw::Pipe, (104.0, 92.0), (22.0, 5.0))];

const PANEL: &[Fixed] = &[
    fixed(Screw::M1, (46.0, 44.0), (-8.0, -17.0)),
    fixed(Screw::M2, (102.0, 44.0), (-8.0, -17.0)),
    fixed(Screw::N, (46.0, 294.0), (16.0, 5.0)),
    fixed(Screw::G, (102.0, 294.0), (-4.0, -18.0)),
    fixed(Screw::B1, (226.0, 196.0), (-8.0, -16.0)),
    fixed(Screw::B2, (226.0, 240.0), (-8.0, 28.0)),
    fixed(Screw::S1, (226.0, 84.0), (-8.0, -16.0)),
    fixed(Screw::S2, (226.0, 128.0), (-8.0, 28.0)),
];

/// The screws of a detail. The tank's bare metal is within reach in both compartments.
pub const fn screws(place: Place) -> &'static [Fixed] {
    match place {
        Place::UpperCompartment => UPPER,
        Place::LowerCompartment => LOWER,
        Place::JunctionBox => BOX,
        Place::InLineBox => IN_LINE,
        Place::HeaterTop => TOP,
        Place::LoadCenter => PANEL,
        _ => &[],
    }
}

const UPPER_WIRES: &[Strand] = &[
    leaving(Wire::FeedA, 1, &[(40.0, 44.0), (18.0, 0.0)], "black"),
    leaving(Wire::FeedB, 1, &[(302.0, 42.0), (322.0, 0.0)], "red"),
    within(Wire::Strap, &[], "strap"),
    within(Wire::UpperSwitched, &[(142.0, 250.0)], "black"),
    within(Wire::UpperPermanent, &[(286.0, 140.0), (300.0, 200.0), (290.0, 270.0)], "red"),
    leaving(Wire::LowerPermanent, 0, &[(304.0, 96.0), (324.0, 150.0), (324.0, 330.0)], "red"),
    leaving(Wire::Transfer, 0, &[(264.0, 220.0), (270.0, 330.0)], "blue"),
    leaving(Wire::LowerFeed, 0, &[(48.0, 140.0), (48.0, 330.0)], "black"),
    leaving(Wire::Interlock, 1, &[(222.0, 220.0), (262.0, 330.0)], "black"),
    within(Wire::BoardLine, &[(60.0, 140.0)], "black"),
    within(Wire::BoardReturn, &[(296.0, 150.0)], "red"),
    within(Wire::BoardUpper, &[(124.0, 250.0)], "black"),
    leaving(Wire::BoardLower, 0, &[(240.0, 250.0), (270.0, 330.0)], "blue"),
];

const LOWER_WIRES: &[Strand] = &[
    leaving(Wire::Transfer, 1, &[(70.0, 50.0), (64.0, 0.0)], "blue"),
    within(Wire::LowerSwitched, &[(246.0, 150.0), (140.0, 190.0)], "black"),
    leaving(Wire::LowerPermanent, 1, &[(262.0, 224.0), (312.0, 150.0), (312.0, 0.0)], "red"),
    leaving(Wire::LowerFeed, 1, &[(70.0, 50.0), (64.0, 0.0)], "black"),
    leaving(Wire::OffPeakFeedA, 1, &[(34.0, 20.0), (30.0, 0.0)], "black"),
    leaving(Wire::OffPeakFeedB, 1, &[(180.0, 16.0), (176.0, 0.0)], "red"),
    leaving(Wire::Interlock, 0, &[(152.0, 16.0), (156.0, 0.0)], "black"),
    within(Wire::OffPeakPermanent, &[(306.0, 120.0), (290.0, 210.0)], "red"),
    leaving(Wire::BoardLower, 1, &[(80.0, 150.0), (64.0, 0.0)], "blue"),
];

const BOX_WIRES: &[Strand] = &[
    leaving(Wire::CableA, 1, &[(96.0, 96.0), (150.0, 40.0), (158.0, 0.0)], "black"),
    leaving(Wire::CableB, 1, &[(178.0, 110.0), (172.0, 0.0)], "white"),
    leaving(Wire::CableG, 1, &[(258.0, 100.0), (196.0, 50.0), (186.0, 0.0)], "green"),
    leaving(Wire::SecondA, 1, &[(50.0, 122.0), (0.0, 100.0)], "black"),
    leaving(Wire::SecondB, 1, &[(130.0, 150.0), (60.0, 70.0), (0.0, 66.0)], "red"),
    leaving(Wire::CableN, 1, &[(178.0, 110.0), (172.0, 0.0)], "white"),
    leaving(Wire::OffPeakA, 1, &[(40.0, 220.0), (0.0, 200.0)], "black"),
    leaving(Wire::OffPeakB, 1, &[(120.0, 290.0), (0.0, 240.0)], "red"),
    leaving(Wire::OffPeakFeedA, 0, &[(96.0, 290.0), (130.0, 330.0)], "black"),
    leaving(Wire::OffPeakFeedB, 0, &[(190.0, 300.0), (216.0, 330.0)], "red"),
    leaving(Wire::WhipA, 1, &[(96.0, 96.0), (150.0, 40.0), (158.0, 0.0)], "black"),
    leaving(Wire::WhipB, 1, &[(178.0, 110.0), (172.0, 0.0)], "red"),
    leaving(Wire::FeedA, 0, &[(76.0, 220.0), (110.0, 330.0)], "black"),
    leaving(Wire::FeedB, 0, &[(182.0, 240.0), (196.0, 330.0)], "red"),
    leaving(Wire::Bond, 0, &[(276.0, 220.0), (262.0, 330.0)], "green"),
];

const TOP_WIRES: &[Strand] = &[leaving(Wire::Bond, 1, &[(214.0, 200.0), (214.0, 140.0)], "green")];

const PANEL_WIRES: &[Strand] = &[
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

const IN_LINE_WIRES: &[Strand] = &[
    leaving(Wire::BoxA, 1, &[(96.0, 40.0), (120.0, 0.0)], "black"),
    leaving(Wire::BoxB, 1, &[(244.0, 40.0), (220.0, 0.0)], "red"),
    leaving(Wire::WhipA, 0, &[(96.0, 300.0), (120.0, 330.0)], "black"),
    leaving(Wire::WhipB, 0, &[(244.0, 300.0), (220.0, 330.0)], "red"),
];

/// The wires of a detail.
pub const fn wires(place: Place) -> &'static [Strand] {
    match place {
        Place::UpperCompartment => UPPER_WIRES,
        Place::LowerCompartment => LOWER_WIRES,
        Place::JunctionBox => BOX_WIRES,
        Place::InLineBox => IN_LINE_WIRES,
        Place::HeaterTop => TOP_WIRES,
        Place::LoadCenter => PANEL_WIRES,
        _ => &[],
    }
}

/// Whether a place has a detail.
pub const fn has_detail(place: Place) -> bool {
    !screws(place).is_empty()
}

/// The level of a compartment.
pub const fn level(place: Place) -> Option<Level> {
    match place {
        Place::UpperCompartment => Some(Level::Upper),
        Place::LowerCompartment => Some(Level::Lower),
        _ => None,
    }
}

/// The middle of a screw in a detail.
pub fn spot(place: Place, screw: Screw) -> Option<At> {
    screws(place).iter().find(|one| one.screw == screw).map(|one| one.at)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_screw_and_every_wire_end_is_drawn_somewhere() {
        for &screw in Screw::ALL {
            assert!(Place::ALL.iter().any(|place| spot(*place, screw).is_some()), "{screw}");
        }
        for end in plant::End::all() {
            let drawn = Place::ALL.iter().flat_map(|place| wires(*place).iter().map(move |one| (place, one)));
            let mut here = drawn.filter(|(place, strand)| {
                strand.wire == end.wire
                    && strand.side.is_none_or(|side| side == end.side)
                    && spot(**place, end.home()).is_some()
            });
            assert!(here.next().is_some(), "{end}");
        }
    }

    #[test]
    fn screws_lie_far_enough_apart_to_be_hit() {
        for (&place, layout) in Place::ALL.iter().flat_map(|p| plant::Layout::ALL.iter().map(move |l| (p, l)))
        {
            let all: Vec<_> = screws(place).iter().filter(|one| layout.has_screw(one.screw)).collect();
            for (i, a) in all.iter().enumerate() {
                for b in &all[i + 1..] {
                    let d = ((a.at.0 - b.at.0).powi(2) + (a.at.1 - b.at.1).powi(2)).sqrt();
                    assert!(d >= 44.0, "{place}: {} and {} are {d:.0} apart", a.screw, b.screw);
                }
            }
        }
    }
}
