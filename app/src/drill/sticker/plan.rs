//! Where screws and wires lie on the diagram, 340 wide: legs down the sides, a rung for each element. Data only.

use plant::{Layout, Screw, Wire};

/// A position.
pub type At = (i16, i16);

/// The two legs.
const LEGS: [i16; 2] = [40, 300];
/// The rung of the upper element.
const UPPER: i16 = 150;

/// The rung of the lower element; the circuit of an off-peak heater comes between.
pub const fn lower(layout: Layout) -> i16 {
    if matches!(layout, Layout::OffPeak) { 406 } else { 256 }
}

/// How high the diagram is.
pub const fn height(layout: Layout) -> i16 {
    if layout.has(plant::Level::Lower) { lower(layout) + 36 } else { 190 }
}

/// Where a screw lies; none for what is not the heater's own, and for plugs, which the board shows.
pub const fn spot(screw: Screw, layout: Layout) -> Option<At> {
    let [left, right] = LEGS;
    let off_peak = matches!(layout, Layout::OffPeak);
    if !layout.has_screw(screw) {
        return None;
    }
    Some(match screw {
        Screw::Ja => (left, 30),
        Screw::Jb => (right, 30),
        Screw::Jg => (150, 30),
        Screw::Shell => (200, 30),
        Screw::H1 => (left, 66),
        Screw::H2 => (left, 102),
        Screw::H3 => (right, 66),
        Screw::H4 => (right, 102),
        Screw::U1 | Screw::K1 => (left, UPPER),
        Screw::U2 | Screw::K3 => (110, UPPER),
        Screw::UEa => (170, UPPER),
        Screw::UEb => (250, UPPER),
        Screw::K2 => (110, 203),
        Screw::U4 if off_peak => (110, 340),
        Screw::U4 => (110, 190),
        Screw::Jc => (left, 226),
        Screw::Jd => (right, 226),
        Screw::H5 => (left, 258),
        Screw::H6 => (left, 294),
        Screw::H7 => (right, 258),
        Screw::H8 => (right, 294),
        Screw::U3 => (left, 340),
        Screw::D1 => (left, lower(layout)),
        Screw::D2 | Screw::K4 => (110, lower(layout)),
        Screw::LEa => (170, lower(layout)),
        Screw::LEb => (250, lower(layout)),
        _ => return None,
    })
}

/// Corners of a wire between its two home screws.
pub fn corners(wire: Wire, layout: Layout) -> Vec<At> {
    let [left, right] = LEGS;
    match wire {
        // Around the contacts of the upper thermostat.
        Wire::LowerFeed => vec![(18, 102), (18, lower(layout))],
        Wire::Transfer => {
            let (_, from) = spot(Screw::U4, layout).unwrap_or_default();
            vec![(110, from + 26), (left, from + 26)]
        }
        Wire::UpperPermanent => vec![(right, UPPER)],
        Wire::LowerPermanent | Wire::OffPeakPermanent => vec![(right, lower(layout))],
        Wire::BoardReturn => vec![(right, 203)],
        _ => Vec::new(),
    }
}

/// The whole way of a wire, from one home screw to the other.
pub fn way(wire: Wire, layout: Layout) -> Option<Vec<At>> {
    let [from, to] = wire.home().map(|screw| spot(screw, layout));
    let mut corners = corners(wire, layout);
    // Corners are told from the left or from the top.
    if matches!(wire, Wire::UpperPermanent | Wire::LowerPermanent | Wire::OffPeakPermanent) {
        corners.reverse();
    }
    Some(std::iter::once(from?).chain(corners).chain([to?]).collect())
}

#[cfg(test)]
mod tests {
    use super::*;

    fn leads(layout: Layout) -> impl Iterator<Item = Wire> {
        Wire::ALL.iter().copied().filter(move |wire| layout.has_lead(*wire))
    }

    #[test]
    fn every_lead_of_every_heater_goes_straight_and_square_from_home_to_home() {
        for &layout in Layout::ALL {
            for wire in leads(layout) {
                let way = way(wire, layout).unwrap_or_else(|| panic!("{layout} {wire}"));
                for leg in way.windows(2) {
                    let [(x, y), (u, v)] = [leg[0], leg[1]];
                    assert!((x == u) != (y == v), "{layout} {wire}: {way:?}");
                }
            }
        }
    }

    #[test]
    fn no_lead_passes_over_a_screw_that_is_not_its_own() {
        for &layout in Layout::ALL {
            for wire in leads(layout) {
                let way = way(wire, layout).unwrap();
                for &screw in Screw::ALL.iter().filter(|screw| !wire.home().contains(screw)) {
                    let Some((x, y)) = spot(screw, layout) else { continue };
                    let over = way.windows(2).any(|leg| {
                        let [(a, b), (c, d)] = [leg[0], leg[1]];
                        (a.min(c)..=a.max(c)).contains(&x) && (b.min(d)..=b.max(d)).contains(&y)
                    });
                    assert!(!over, "{layout}: {wire} over {screw}");
                }
            }
        }
    }

    #[test]
    fn screws_lie_apart_and_on_the_sheet() {
        for &layout in Layout::ALL {
            let all: Vec<_> = Screw::ALL.iter().filter_map(|&screw| spot(screw, layout)).collect();
            for (at, (x, y)) in all.iter().enumerate() {
                assert!((20..=320).contains(x) && (20..height(layout) - 20).contains(y), "{layout} {x} {y}");
                for (u, v) in &all[at + 1..] {
                    assert!((x - u).abs() + (y - v).abs() >= 30, "{layout} {x} {y} and {u} {v}");
                }
            }
        }
    }
}
