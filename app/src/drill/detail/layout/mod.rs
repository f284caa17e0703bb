//! Where screws and wires lie in each detail, 340 by 330, for each way a heater is wired.

mod lower;
mod outside;
mod upper;

use plant::{Layout, Level, Place, Screw, Wire};

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

/// The screws of a detail. The tank's bare metal is within reach in both compartments.
pub const fn screws(place: Place, layout: Layout) -> &'static [Fixed] {
    match place {
        Place::UpperCompartment => upper::screws(layout),
        Place::LowerCompartment => lower::screws(layout),
        Place::JunctionBox => outside::BOX,
        Place::InLineBox => outside::IN_LINE,
        Place::HeaterTop => outside::TOP,
        Place::LoadCenter => outside::PANEL,
        _ => &[],
    }
}

/// The wires of a detail.
pub const fn wires(place: Place, layout: Layout) -> &'static [Strand] {
    match place {
        Place::UpperCompartment => upper::wires(layout),
        Place::LowerCompartment => lower::wires(layout),
        Place::JunctionBox => outside::BOX_WIRES,
        Place::InLineBox => outside::IN_LINE_WIRES,
        Place::HeaterTop => outside::TOP_WIRES,
        Place::LoadCenter => outside::PANEL_WIRES,
        _ => &[],
    }
}

/// Where leads without labels come out of their bundle: what hangs below it is clear of every screw of the place.
pub const fn bundle(place: Place) -> At {
    match place {
        Place::UpperCompartment => (170.0, 230.0),
        Place::LowerCompartment => (170.0, 124.0),
        _ => (262.0, 206.0),
    }
}

/// Whether a place has a detail.
pub const fn has_detail(place: Place) -> bool {
    matches!(
        place,
        Place::UpperCompartment
            | Place::LowerCompartment
            | Place::JunctionBox
            | Place::InLineBox
            | Place::HeaterTop
            | Place::LoadCenter
    )
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
pub fn spot(place: Place, layout: Layout, screw: Screw) -> Option<At> {
    screws(place, layout).iter().find(|one| one.screw == screw).map(|one| one.at)
}

#[cfg(test)]
mod tests {
    use plant::{End, HeaterModel, Wiring};

    use super::*;

    /// The heaters as wired in a house of their own, with and without a box in the line.
    fn wirings() -> impl Iterator<Item = (HeaterModel, Wiring)> {
        HeaterModel::ALL.iter().flat_map(|&model| {
            let plate = model.plate();
            [false, true].map(|boxed| {
                let mut wiring = Wiring::factory(plate.layout, plate.supply().hot_neutral());
                wiring.boxed = boxed;
                (model, wiring)
            })
        })
    }

    #[test]
    fn every_screw_and_every_wire_end_of_every_heater_is_drawn_somewhere() {
        for (model, wiring) in wirings() {
            let layout = wiring.layout;
            for &screw in Screw::ALL.iter().filter(|one| wiring.has_screw(**one)) {
                let seen = Place::ALL.iter().any(|place| spot(*place, layout, screw).is_some());
                assert!(seen, "{model} {screw}");
            }
            for end in End::all().filter(|end| wiring.exists(end.wire)) {
                let drawn = Place::ALL
                    .iter()
                    .flat_map(|place| wires(*place, layout).iter().map(move |one| (place, one)));
                let mut here = drawn.filter(|(place, strand)| {
                    strand.wire == end.wire
                        && strand.side.is_none_or(|side| side == end.side)
                        && spot(**place, layout, end.home()).is_some()
                });
                assert!(here.next().is_some(), "{model} {end}");
            }
        }
    }

    #[test]
    fn nothing_is_drawn_behind_the_covers_that_the_heater_lacks() {
        for (model, wiring) in wirings() {
            for place in [Place::UpperCompartment, Place::LowerCompartment] {
                for one in screws(place, wiring.layout) {
                    assert!(wiring.has_screw(one.screw), "{model} {}", one.screw);
                }
            }
        }
    }

    #[test]
    fn screws_lie_far_enough_apart_to_be_hit() {
        for (&place, layout) in Place::ALL.iter().flat_map(|p| Layout::ALL.iter().map(move |l| (p, *l))) {
            let all: Vec<_> =
                screws(place, layout).iter().filter(|one| layout.has_screw(one.screw)).collect();
            for (i, a) in all.iter().enumerate() {
                for b in &all[i + 1..] {
                    let d = ((a.at.0 - b.at.0).powi(2) + (a.at.1 - b.at.1).powi(2)).sqrt();
                    assert!(d >= 44.0, "{place} {layout}: {} and {} are {d:.0} apart", a.screw, b.screw);
                }
            }
        }
    }
}
